namespace BlockingTemplates.Engine.Pieces;

/// <summary>What lengths a measurement may have.</summary>
public enum SizeReach
{
    /// <summary>Above zero.</summary>
    AboveZero,

    /// <summary>Zero or above.</summary>
    FromZero,

    /// <summary>To either side: negative, zero or positive.</summary>
    EitherWay,
}
