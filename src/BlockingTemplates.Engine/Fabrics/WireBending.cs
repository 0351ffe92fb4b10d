using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The bending energy of wires on the rim nodes of a mesh, in units of the cloth's greater stiffness.</summary>
internal sealed class WireBending
{
    private const double SameFraction = 1e-9;

    private readonly List<Bend> _bends = [];

    /// <summary>Sets up wires.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="wires">The wires.</param>
    /// <param name="unit">The stiffness that energies are measured in.</param>
    internal WireBending(TriangleMesh mesh, IReadOnlyList<EdgeWire> wires, double unit)
    {
        foreach (var wire in wires)
            Add(mesh, wire, unit);
    }

    /// <summary>Triples of rim nodes that a wire on an edge couples.</summary>
    internal static IEnumerable<int[]> Groups(TriangleMesh mesh, int edge)
    {
        var n = mesh.Rim.Count;
        for (var i = 0; i < n; i++)
        {
            if (mesh.Rim[i].Edge == edge)
                yield return [i, (i + 1) % n, (i + 2) % n];
        }
    }

    /// <summary>Adds the gradient and, where asked for, the tangent; gives the energy and the sum of the squared forces on the nodes.</summary>
    internal (double Energy, double SquaredForces) AddTo(ReadOnlySpan<double> x, Span<double> gradient, StiffnessMatrix? tangent)
    {
        var (energy, forces) = (0.0, 0.0);
        foreach (var bend in _bends)
        {
            var curvature = 0.0;
            for (var k = 0; k < 3; k++)
                curvature += bend.Parts[k] * ((bend.Across.X * x[2 * bend.Nodes[k]]) + (bend.Across.Y * x[(2 * bend.Nodes[k]) + 1]));
            energy += bend.Weight / 2 * curvature * curvature;
            for (var k = 0; k < 3; k++)
            {
                var force = bend.Weight * curvature * bend.Parts[k];
                gradient[2 * bend.Nodes[k]] += force * bend.Across.X;
                gradient[(2 * bend.Nodes[k]) + 1] += force * bend.Across.Y;
                forces += force * force;
            }

            if (tangent is not null)
                AddTo(tangent, bend);
        }

        return (energy, forces);
    }

    private void Add(TriangleMesh mesh, EdgeWire wire, double unit)
    {
        List<(int Node, double At)> chain = [];
        for (var i = 0; i < mesh.Rim.Count; i++)
        {
            var edge = mesh.Rim[i].Edge;
            if (edge != wire.Edge)
                continue;
            var fraction = wire.Match.PinnedOf(mesh.Rim[i].Fraction);
            if (fraction >= wire.From - SameFraction && fraction <= wire.To + SameFraction)
                chain.Add((i, fraction));
            // The last corner belongs to the edge that starts there.
            if (wire.To >= 1 - SameFraction && (i + 1 == mesh.Rim.Count || mesh.Rim[i + 1].Edge != edge))
                chain.Add(((i + 1) % mesh.Rim.Count, 1));
        }

        for (var i = 1; i < chain.Count - 1; i++)
        {
            var before = (chain[i].At - chain[i - 1].At) * wire.Line.Length;
            var after = (chain[i + 1].At - chain[i].At) * wire.Line.Length;
            var mean = (before + after) / 2;
            _bends.Add(new(
                [chain[i - 1].Node, chain[i].Node, chain[i + 1].Node],
                [1 / (before * mean), -(1 / (before * mean)) - (1 / (after * mean)), 1 / (after * mean)],
                wire.Line.Direction(chain[i].At).TurnedLeft,
                wire.Stiffness / unit * mean));
        }
    }

    private static void AddTo(StiffnessMatrix tangent, Bend bend)
    {
        var (x, y) = (bend.Across.X, bend.Across.Y);
        for (var k = 0; k < 3; k++)
        {
            for (var l = 0; l <= k; l++)
            {
                var w = bend.Weight * bend.Parts[k] * bend.Parts[l];
                tangent.Add(bend.Nodes[k], bend.Nodes[l], w * x * x, w * x * y, w * x * y, w * y * y);
            }
        }
    }

    /// <summary>The curvature of the wire at one node: parts of its neighbours' places across the line.</summary>
    private readonly record struct Bend(int[] Nodes, double[] Parts, Vector Across, double Weight);
}
