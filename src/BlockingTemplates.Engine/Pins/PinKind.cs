namespace BlockingTemplates.Engine.Pins;

/// <summary>What stands at a mark.</summary>
public enum PinKind
{
    /// <summary>A single pin.</summary>
    Pin,
}
