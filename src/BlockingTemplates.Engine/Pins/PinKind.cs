namespace BlockingTemplates.Engine.Pins;

/// <summary>What stands at a mark.</summary>
public enum PinKind
{
    /// <summary>A single pin.</summary>
    Pin,

    /// <summary>A comb pin: several prongs on one bar.</summary>
    Comb,

    /// <summary>A single pin that holds a blocking wire.</summary>
    Wire,
}
