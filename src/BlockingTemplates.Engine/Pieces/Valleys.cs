namespace BlockingTemplates.Engine.Pieces;

/// <summary>What is done with the valleys between the points of an edge.</summary>
public enum Valleys
{
    /// <summary>They hang free: only the tips are pinned.</summary>
    Free,

    /// <summary>Each has a mark of its own.</summary>
    Pinned,
}
