namespace BlockingTemplates.Engine;

/// <summary>What the figures of a comparison are.</summary>
public enum ComparedMeasure
{
    /// <summary>Lengths in millimetres.</summary>
    Length,

    /// <summary>Whole numbers.</summary>
    Count,

    /// <summary>Stretch as a fraction: 0.1 is 10 %.</summary>
    Stretch,
}
