using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Energy, out-of-balance forces and tangent stiffness of a meshed cloth, in units of its greater stiffness.</summary>
/// <remarks>Constant-strain triangles; F = sum of x_a (x) grad N_a in the cloth's axes, E = (F'F - 1) / 2.</remarks>
public sealed class MembraneEnergy
{
    private readonly TriangleMesh _mesh;
    private readonly TensionField _law;
    private readonly double _grain;
    private readonly Element[] _elements;
    private readonly (int Place, bool Transposed)[] _places;

    /// <summary>Sets up a mesh and a cloth.</summary>
    /// <param name="mesh">The unblocked cloth.</param>
    /// <param name="cloth">Its stiffness.</param>
    /// <param name="carriesCompression">True for an elastic sheet without wrinkles.</param>
    /// <param name="coupled">Groups of nodes coupled beyond the triangles, such as those under one stitch.</param>
    public MembraneEnergy(TriangleMesh mesh, OrthotropicCloth cloth, bool carriesCompression = false, IReadOnlyList<int[]>? coupled = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(cloth);
        _mesh = mesh;
        Unit = Math.Max(cloth.Stiffness.C11, cloth.Stiffness.C22);
        _law = new(cloth.Stiffness.Times(1 / Unit), carriesCompression);
        _grain = cloth.GrainDegrees * Math.PI / 180;
        _elements = [.. mesh.Triangles.Select(t => new Element(t, mesh.Nodes, _grain))];
        Pattern = StiffnessPattern.Of(mesh.Nodes.Count, [.. mesh.Triangles.Select(t => new[] { t.A, t.B, t.C }), .. coupled ?? []]);
        _places = new (int, bool)[6 * _elements.Length];
        for (var e = 0; e < _elements.Length; e++)
        {
            var (a, b, c) = _elements[e].Nodes;
            (int Row, int Column)[] pairs = [(a, a), (b, b), (c, c), (b, a), (c, a), (c, b)];
            for (var k = 0; k < 6; k++)
                _places[(6 * e) + k] = (4 * Pattern.Place(pairs[k].Row, pairs[k].Column), pairs[k].Row < pairs[k].Column);
        }
    }

    /// <summary>The force a width that energies and forces are measured in: the greater of C11 and C22.</summary>
    public double Unit { get; }

    /// <summary>The pattern of the tangent stiffness.</summary>
    public StiffnessPattern Pattern { get; }

    /// <summary>Energy of the cloth at given node places (x and y of node 0, of node 1, ...).</summary>
    public double Energy(ReadOnlySpan<double> x, SlackStay stay)
    {
        var shape = Turned(stay.Shape);
        var energy = 0.0;
        foreach (var element in _elements)
        {
            var f = element.Gradient(x);
            energy += element.Area * (_law.At(f.Strain).Energy + (stay.Share / 2 * f.SquaredDistanceTo(shape)));
        }

        return energy;
    }

    /// <summary>Energy at given node places, and its gradient.</summary>
    public double Gradient(ReadOnlySpan<double> x, SlackStay stay, Span<double> gradient)
    {
        gradient.Clear();
        var shape = Turned(stay.Shape);
        var energy = 0.0;
        Span<Vector> force = stackalloc Vector[3];
        foreach (ref readonly var element in _elements.AsSpan())
        {
            var f = element.Gradient(x);
            var answer = _law.At(f.Strain);
            energy += element.Area * (answer.Energy + (stay.Share / 2 * f.SquaredDistanceTo(shape)));
            element.Forces(f, shape, answer.Stress, stay.Share, force);
            Add(gradient, element.Nodes, force);
        }

        return energy;
    }

    /// <summary>Energy and its derivatives at given node places.</summary>
    /// <param name="x">Node places.</param>
    /// <param name="stay">What keeps slack cloth in place.</param>
    /// <param name="gradient">Takes the energy's gradient; as long as <paramref name="x"/>.</param>
    /// <param name="tangent">Takes the energy's second derivative.</param>
    /// <returns>The energy, and the root of the sum of the squared forces of all triangles on their nodes, a measure of force.</returns>
    public (double Energy, double Forces) Derivatives(ReadOnlySpan<double> x, SlackStay stay, Span<double> gradient, StiffnessMatrix tangent)
    {
        ArgumentNullException.ThrowIfNull(tangent);
        gradient.Clear();
        tangent.Clear();
        var shape = Turned(stay.Shape);
        var (energy, forces) = (0.0, 0.0);
        Span<Vector> force = stackalloc Vector[3];
        for (var e = 0; e < _elements.Length; e++)
        {
            ref readonly var element = ref _elements[e];
            var f = element.Gradient(x);
            var answer = _law.At(f.Strain);
            energy += element.Area * (answer.Energy + (stay.Share / 2 * f.SquaredDistanceTo(shape)));
            element.Forces(f, shape, answer.Stress, stay.Share, force);
            Add(gradient, element.Nodes, force);
            forces += force[0].Dot(force[0]) + force[1].Dot(force[1]) + force[2].Dot(force[2]);
            element.AddStiffness(f, answer, stay.Share, tangent.Values, _places.AsSpan(6 * e, 6));
        }

        return (energy, Math.Sqrt(forces));
    }

    /// <summary>Stretch along and across the rows (length over rest length - 1) and state of each triangle.</summary>
    public IReadOnlyList<ClothStretch> Stretches(IReadOnlyList<Point> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        double[] x = [.. places.SelectMany(p => (double[])[p.X, p.Y])];
        return [.. _elements.Select(element =>
        {
            var f = element.Gradient(x);
            var answer = _law.At(f.Strain);
            return new ClothStretch(f.Along.Length - 1, f.Across.Length - 1, answer.State);
        })];
    }

    private static void Add(Span<double> gradient, Triangle nodes, ReadOnlySpan<Vector> force)
    {
        var (a, b, c) = (2 * nodes.A, 2 * nodes.B, 2 * nodes.C);
        gradient[a] += force[0].X;
        gradient[a + 1] += force[0].Y;
        gradient[b] += force[1].X;
        gradient[b + 1] += force[1].Y;
        gradient[c] += force[2].X;
        gradient[c + 1] += force[2].Y;
    }

    private DeformationGradient Turned(Affine shape)
    {
        var (rows, columns) = (Vector.AtAngle(_grain), Vector.AtAngle(_grain).TurnedLeft);
        return new(shape.Map(rows), shape.Map(columns));
    }

    /// <summary>A triangle at rest, in the cloth's axes.</summary>
    private readonly struct Element
    {
        private readonly Vector _a;
        private readonly Vector _b;
        private readonly Vector _c;

        internal Element(Triangle t, IReadOnlyList<Point> nodes, double grain)
        {
            Nodes = t;
            var (a, b, c) = (nodes[t.A], nodes[t.B], nodes[t.C]);
            var twice = (b - a).Cross(c - a);
            Area = twice / 2;
            var turn = Affine.Turn(-grain);
            (_a, _b, _c) = (turn.Map(1 / twice * (c - b).TurnedLeft), turn.Map(1 / twice * (a - c).TurnedLeft), turn.Map(1 / twice * (b - a).TurnedLeft));
        }

        internal Triangle Nodes { get; }

        internal double Area { get; }

        internal DeformationGradient Gradient(ReadOnlySpan<double> x)
        {
            var (pa, pb, pc) = (At(x, Nodes.A), At(x, Nodes.B), At(x, Nodes.C));
            var (u, v) = (pb - pa, pc - pa);
            return new((_b.X * u) + (_c.X * v), (_b.Y * u) + (_c.Y * v));

            static Vector At(ReadOnlySpan<double> x, int node) => new(x[2 * node], x[(2 * node) + 1]);
        }

        internal void Forces(DeformationGradient f, DeformationGradient shape, PlaneTensor s, double share, Span<Vector> force)
        {
            var along = Area * ((s.Along * f.Along) + (s.Shear * f.Across) + (share * (f.Along - shape.Along)));
            var across = Area * ((s.Shear * f.Along) + (s.Across * f.Across) + (share * (f.Across - shape.Across)));
            force[0] = (_a.X * along) + (_a.Y * across);
            force[1] = (_b.X * along) + (_b.Y * across);
            force[2] = (_c.X * along) + (_c.Y * across);
        }

        internal void AddStiffness(DeformationGradient f, MembraneResponse answer, double share, double[] values, ReadOnlySpan<(int Place, bool Transposed)> places)
        {
            AddBlock(_a, _a, f, answer, share, values, places[0]);
            AddBlock(_b, _b, f, answer, share, values, places[1]);
            AddBlock(_c, _c, f, answer, share, values, places[2]);
            AddBlock(_b, _a, f, answer, share, values, places[3]);
            AddBlock(_c, _a, f, answer, share, values, places[4]);
            AddBlock(_c, _b, f, answer, share, values, places[5]);
        }

        private void AddBlock(Vector p, Vector q, DeformationGradient f, MembraneResponse answer, double share, double[] values, (int Place, bool Transposed) at)
        {
            var s = answer.Stress;
            var even = (s.Along * p.X * q.X) + (s.Across * p.Y * q.Y) + (s.Shear * ((p.X * q.Y) + (p.Y * q.X))) + (share * p.Dot(q));
            var (x1, x2, x3) = (f.Along.X * p.X, f.Across.X * p.Y, (f.Along.X * p.Y) + (f.Across.X * p.X));
            var (y1, y2, y3) = (f.Along.Y * p.X, f.Across.Y * p.Y, (f.Along.Y * p.Y) + (f.Across.Y * p.X));
            var (dx1, dx2, dx3) = answer.Tangent.Times(f.Along.X * q.X, f.Across.X * q.Y, (f.Along.X * q.Y) + (f.Across.X * q.X));
            var (dy1, dy2, dy3) = answer.Tangent.Times(f.Along.Y * q.X, f.Across.Y * q.Y, (f.Along.Y * q.Y) + (f.Across.Y * q.X));
            var v = values.AsSpan(at.Place, 4);
            v[0] += Area * (even + (x1 * dx1) + (x2 * dx2) + (x3 * dx3));
            v[at.Transposed ? 2 : 1] += Area * ((x1 * dy1) + (x2 * dy2) + (x3 * dy3));
            v[at.Transposed ? 1 : 2] += Area * ((y1 * dx1) + (y2 * dx2) + (y3 * dx3));
            v[3] += Area * (even + (y1 * dy1) + (y2 * dy2) + (y3 * dy3));
        }
    }
}
