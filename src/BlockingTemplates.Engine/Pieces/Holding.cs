namespace BlockingTemplates.Engine.Pieces;

/// <summary>What holds an edge while it dries.</summary>
public enum Holding
{
    /// <summary>Single pins.</summary>
    Pins,

    /// <summary>A blocking wire through the edge.</summary>
    Wire,

    /// <summary>Comb pins.</summary>
    Comb,

    /// <summary>Nothing between its corners.</summary>
    None,
}
