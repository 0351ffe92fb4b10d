using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How hard the stretched cloth pulls at an edge, across it, in newtons a millimetre of edge.</summary>
/// <param name="Least">With the softest cloth it may be.</param>
/// <param name="Most">With the stiffest.</param>
/// <param name="Stretch">Stretch across the edge that it is taken from: 0.2 is 20 %.</param>
/// <param name="IsMeasured">Whether that stretch is the piece's own; else the habitual one of the kind of cloth.</param>
/// <param name="IsKnown">Whether strips tell how stiff the cloth is; else both ends of the published range stand.</param>
public readonly record struct EdgePull(double Least, double Most, double Stretch, bool IsMeasured, bool IsKnown)
{
    /// <summary>The pull by the stretch across an edge and the stiffness that strips tell, else both ends of the published range.</summary>
    public static EdgePull Of(Piece piece, Outline pinned, int edge)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(pinned);
        var fabric = piece.Fabric;
        var stretch = Across(piece, pinned, edge) ?? HabitualStretch.Most(fabric.Kind ?? FabricKind.Lace);
        if (fabric.Strips is null || ClothMaterials.Of(fabric) is not { NewtonsPerMetre: { } unit } material)
            return new(stretch * PublishedCloth.Softest, stretch * PublishedCloth.Stiffest, stretch, piece.Unblocked is not null, false);
        var curve = (piece.Unblocked ?? pinned).Edges[edge].Curve;
        var (along, rows) = ((curve.End - curve.Start).Unit, Vector.AtAngle(fabric.GrainDegrees * Math.PI / 180));
        var ratio = Math.Abs(along.Dot(rows)) >= Math.Abs(along.Cross(rows)) ? material.Likely.EAcross : material.Likely.EAlong;
        return new(stretch * ratio * unit.Least / 1000, stretch * ratio * unit.Most / 1000, stretch, piece.Unblocked is not null, true);
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
