namespace BlockingTemplates.Engine;

/// <summary>One of the plans of a project file: of a size, of one of a pair, or of both.</summary>
/// <param name="Size">The size's name; empty where the file lists none.</param>
/// <param name="Piece">The piece's name; empty where it is no pair.</param>
/// <param name="IsMirrored">Whether it is the mirrored one of a pair.</param>
/// <param name="Plan">Its plan.</param>
public sealed record PlannedPart(string Size, string Piece, bool IsMirrored, Plan Plan)
{
    /// <summary>Size and piece as a head of a column; empty where the file gives one plan.</summary>
    public string Name => Size.Length > 0 && Piece.Length > 0 ? $"{Size}, {Piece}" : Size + Piece;
}
