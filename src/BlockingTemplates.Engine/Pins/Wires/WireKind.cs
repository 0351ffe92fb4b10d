namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>How far a blocking wire may be bent and come back straight.</summary>
public enum WireKind
{
    /// <summary>A straight rod of soft stainless steel: for straight edges.</summary>
    Stiff,

    /// <summary>Spring-tempered stainless steel: follows curves.</summary>
    Flexible,
}
