using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine;

/// <summary>A finished plan: the records of all stages, in the frame of the mat field. Immutable.</summary>
/// <param name="Project">What the maker asked for.</param>
/// <param name="Piece">The piece.</param>
/// <param name="Pins">Where every pin goes.</param>
/// <param name="Mats">The mats under it.</param>
/// <param name="Guides">One full-size guide for each paper asked for.</param>
/// <param name="Plot">The whole guide on one page.</param>
/// <param name="Notes">What the maker should know.</param>
public sealed record Plan(
    Project Project,
    Piece Piece,
    PinPlan Pins,
    MatLayout Mats,
    IReadOnlyList<Guide> Guides,
    Guide Plot,
    IReadOnlyList<Note> Notes)
{
    /// <summary>The finished outline where it lies inside the pinned one: what the piece springs back to about its anchor.</summary>
    public Outline FinishedInFrame => Pins.Anchor.Place is var (edge, fraction)
        ? Piece.Finished.Mapped(Affine.Shift(Pins.Pinned.Edges[edge].Curve.At(fraction) - Piece.Finished.Edges[edge].Curve.At(fraction)))
        : Piece.Finished.Mapped(Affine.Shift(Box.Around(Pins.Pinned.Ring()).Centre - Box.Around(Piece.Finished.Ring()).Centre));
}
