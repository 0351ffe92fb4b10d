namespace BlockingTemplates.Engine.Pieces;

/// <summary>What is counted along an edge.</summary>
public enum CountedIn
{
    /// <summary>Stitches: a cast-on or bind-off edge.</summary>
    Stitches,

    /// <summary>Rows: a side edge.</summary>
    Rows,
}
