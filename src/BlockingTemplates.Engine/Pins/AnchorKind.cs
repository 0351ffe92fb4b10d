namespace BlockingTemplates.Engine.Pins;

/// <summary>What is pinned first.</summary>
public enum AnchorKind
{
    /// <summary>Nothing: the piece is laid by its lay line alone.</summary>
    None,

    /// <summary>The mark at a corner.</summary>
    Corner,

    /// <summary>The mark at the middle of an edge.</summary>
    MiddleOfEdge,

    /// <summary>All marks of an edge.</summary>
    WholeEdge,
}
