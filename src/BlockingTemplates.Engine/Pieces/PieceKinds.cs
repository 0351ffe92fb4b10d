namespace BlockingTemplates.Engine.Pieces;

/// <summary>The kinds of piece that the tool knows.</summary>
public static class PieceKinds
{
    /// <summary>All kinds; a new one is one line here.</summary>
    public static IReadOnlyList<PieceKind> All { get; } =
    [
        new TrianglePiece(),
        new CrescentPiece(),
        new SemicirclePiece(),
        new CirclePiece(),
        new OvalPiece(),
        new SquarePiece(),
        new RectanglePiece(),
        new ParallelogramPiece(),
        new TrapezoidPiece(),
        new KitePiece(),
        new RegularPolygonPiece("pentagon", 5),
        new RegularPolygonPiece("hexagon", 6),
        new RegularPolygonPiece("octagon", 8),
        new RegularPolygonPiece("decagon", 10),
        new RegularPolygonPiece("dodecagon", 12),
        new CollarPiece(),
        new PanelPiece(),
        new SleevePiece(),
        new OutlinePiece(),
    ];

    /// <summary>The kind of a name in a project file, or null.</summary>
    public static PieceKind? Find(string shape) => All.FirstOrDefault(k => k.Shape == shape);
}
