using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How hard the stretched cloth pulls at an edge, across it, in newtons a millimetre of edge.</summary>
/// <param name="Least">With the softest cloth it may be.</param>
/// <param name="Most">With the stiffest.</param>
/// <param name="Stretch">Stretch across the edge that it is taken from: 0.2 is 20 %.</param>
/// <param name="IsMeasured">Whether that stretch is the piece's own; else the habitual one of the kind of cloth.</param>
public readonly record struct EdgePull(double Least, double Most, double Stretch, bool IsMeasured)
{
    /// <summary>The pull where the cloth's stiffness is not known: both ends of the published range.</summary>
    public static EdgePull Published(Piece piece, Outline pinned, int edge)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(pinned);
        var stretch = Across(piece, pinned, edge) ?? HabitualStretch.Most(piece.Fabric.Kind ?? FabricKind.Lace);
        return new(stretch * PublishedCloth.Softest, stretch * PublishedCloth.Stiffest, stretch, piece.Unblocked is not null);
    }

    /// <summary>Stretch of the cloth across an edge, at least 0, or null where the piece was not measured: what its area grows by beyond the edge's own stretch.</summary>
    public static double? Across(Piece piece, Outline pinned, int edge)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(pinned);
        if (piece.Unblocked is not { } unblocked)
            return null;
        var along = pinned.Edges[edge].Curve.Length / unblocked.Edges[edge].Curve.Length;
        return Math.Max(0, (pinned.SignedArea() / unblocked.SignedArea() / along) - 1);
    }
}
