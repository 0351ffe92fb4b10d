using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

/// <summary>A meshed outline pinned at about even gaps to another one.</summary>
internal sealed record PinnedPiece(TriangleMesh Mesh, MembraneSupport Support, Outline Pinned)
{
    internal const double StitchMm = 7;

    internal static PinnedPiece Of(Outline rest, Outline pinned, double gapMm, double edgeMm, double insideMm, int nodesPerStitch = 2)
    {
        var pins = new List<HeldStitch>();
        for (var e = 0; e < rest.Edges.Count; e++)
        {
            var count = (int)Math.Ceiling(rest.Edges[e].Curve.Length / gapMm);
            for (var i = 0; i < count; i++)
                pins.Add(new(e, (double)i / count, StitchMm, pinned.Edges[e].Curve.At((double)i / count)));
        }

        var mesh = TriangleMesher.Mesh(rest, new()
        {
            EdgeMm = edgeMm,
            InsideMm = insideMm,
            NodesPerStitch = nodesPerStitch,
            FinePlaces = [.. pins.Select(p => new FinePlace(p.Edge, p.Fraction, p.WidthMm))],
        });
        return new(mesh, new() { Pins = pins }, pinned);
    }

    internal Equilibrium Solve(OrthotropicCloth cloth, EquilibriumSettings? settings = null) =>
        new MembraneSolver(Mesh, cloth, StitchMm).Solve(Support, settings);
}
