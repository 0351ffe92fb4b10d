namespace BlockingTemplates.Drawing.Pages;

/// <summary>What a step of a path does.</summary>
public enum PathStepKind
{
    /// <summary>Starts a new stretch at a point.</summary>
    Move,

    /// <summary>Draws a straight line to a point.</summary>
    Line,

    /// <summary>Draws a cubic Bézier curve to a point.</summary>
    Cubic,

    /// <summary>Closes the stretch.</summary>
    Close,
}
