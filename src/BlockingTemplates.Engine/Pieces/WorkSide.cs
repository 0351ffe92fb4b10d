namespace BlockingTemplates.Engine.Pieces;

/// <summary>A side of the work.</summary>
public enum WorkSide
{
    /// <summary>The right side of the work.</summary>
    RightSide,

    /// <summary>The wrong side of the work.</summary>
    WrongSide,
}
