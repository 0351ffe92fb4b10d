namespace BlockingTemplates.Engine.Pieces;

/// <summary>The kinds of piece that the tool knows.</summary>
public static class PieceKinds
{
    /// <summary>All kinds; a new one is one line here.</summary>
    public static IReadOnlyList<PieceKind> All { get; } =
    [
        new TrianglePiece(),
        new RectanglePiece(),
        new OutlinePiece(),
    ];

    /// <summary>The kind of a name in a project file, or null.</summary>
    public static PieceKind? Find(string shape) => All.FirstOrDefault(k => k.Shape == shape);
}
