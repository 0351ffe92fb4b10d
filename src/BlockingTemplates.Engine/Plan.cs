using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
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
    /// <summary>What it takes of pins, combs and wires.</summary>
    public IReadOnlyList<Supply> Supplies { get; init; } = [];

    /// <summary>The ways of holding each edge side by side.</summary>
    public IReadOnlyList<EdgeAdvice> Advice { get; init; } = [];

    /// <summary>What the cloth does between and at the pins, or null where it was not computed.</summary>
    public ClothPlan? Cloth { get; init; }

    /// <summary>The finished outline where it lies inside the pinned one: turned as that is, and what it springs back to about its anchor.</summary>
    public Outline FinishedInFrame
    {
        get
        {
            var (finished, pinned) = (Piece.Finished, UprightPinned);
            var by = Pins.Anchor.Place is var (edge, fraction)
                ? pinned.Edges[edge].Curve.At(fraction) - finished.Edges[edge].Curve.At(fraction)
                : Box.Around(pinned.Ring()).Centre - Box.Around(finished.Ring()).Centre;
            var placed = finished.Mapped(Affine.Shift(by));
            return PieceTurn == 0 ? placed : placed.Mapped(Affine.Turn(PieceTurn));
        }
    }

    /// <summary>The pinned outline as it lies where the mats do not turn freely: turned back about the frame's origin.</summary>
    public Outline UprightPinned => PieceTurn == 0 ? Pins.Pinned : Pins.Pinned.Mapped(Affine.Turn(-PieceTurn));

    /// <summary>Turn of the piece in the frame, counter-clockwise, in radians.</summary>
    public double PieceTurn => Mats.PieceTurnDegrees * Math.PI / 180;
}
