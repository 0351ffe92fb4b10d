using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class MembraneSolverTests
{
    private static readonly OrthotropicCloth Cloth = new(1, 0.6, 0.4, 0.25, 15);
    private static readonly EquilibriumSettings Exact = new() { Tolerance = 1e-11 };

    [Theory]
    [InlineData(1.2, 0.15, 0.1, 1.1, ClothState.Taut)]
    [InlineData(1.2, 0.05, 0.0, 0.8, ClothState.Wrinkled)]
    [InlineData(0.9, 0.05, 0.0, 0.8, ClothState.Slack)]
    public void An_evenly_moved_rim_gives_an_even_stretch_inside(double xx, double xy, double yx, double yy, ClothState state)
    {
        // Patch test at finite strain, from a jumbled start.
        var mesh = TriangleMesher.Mesh(Outlines.TurnedRectangle, new() { EdgeMm = 60, InsideMm = 90 });
        var map = new Affine(xx, xy, 20, yx, yy, -30);
        var support = new MembraneSupport { Fixed = [.. Enumerable.Range(0, mesh.Rim.Count).Select(i => Fix(i, map.Map(mesh.Nodes[i])))] };
        var random = new Random(1);
        Point[] start = [.. mesh.Nodes.Select(p => map.Map(p) + new Vector(10 * random.NextDouble(), 10 * random.NextDouble()))];
        var rest = new MembraneSolver(mesh, Cloth, 0).Solve(support, Exact, start);
        Assert.True(rest.Converged, $"{rest.End} {rest.Residual}");
        for (var i = 0; i < mesh.Nodes.Count; i++)
            Assert.True(rest.Places[i].DistanceTo(map.Map(mesh.Nodes[i])) < 1e-9 * 1000, $"{rest.Places[i].DistanceTo(map.Map(mesh.Nodes[i]))}");
        Assert.All(rest.Stretches, s => Assert.Equal(rest.Stretches[0].Along, s.Along, 1e-9));
        Assert.All(rest.Stretches, s => Assert.Equal(state, s.State));
    }

    [Fact]
    public void Pins_hold_the_mean_of_their_stitch_and_their_loads_balance()
    {
        var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 50, 15, 30);
        var rest = piece.Solve(Cloth);
        Assert.True(rest.Converged);
        Assert.True(rest.PinErrorMm < 1e-5, $"{rest.PinErrorMm}");
        Assert.Equal(piece.Mesh.SmallestAngleDegrees, rest.SmallestAngleDegrees);
        var (force, turn, size) = (default(Vector), 0.0, 0.0);
        foreach (var (pin, load) in piece.Support.Pins.Zip(rest.PinLoads))
        {
            force += load;
            turn += (pin.Mark - Point.Origin).Cross(load);
            size += load.Length;
        }

        Assert.True(force.Length < 1e-7 * size, $"{force.Length} of {size}");

        // The stay of slack cloth is turned with the pins, not with the cloth: it may keep a moment of its small share.
        Assert.True(Math.Abs(turn) < 1e-4 * size * 1000, $"{turn}");

        // Nodes half a stitch apart: 1/4 1/2 1/4; at the corner the rim runs on from its last node.
        var mesh = piece.Mesh;
        var mid = Enumerable.Range(0, mesh.Rim.Count).MinBy(i => Math.Abs(mesh.Rim[i].ArcMm - mesh.Rim.First(r => r.Edge == 1).ArcMm));
        var mean = Point.Origin + (0.25 * (rest.Places[mid - 1] - Point.Origin)) + (0.5 * (rest.Places[mid] - Point.Origin)) + (0.25 * (rest.Places[mid + 1] - Point.Origin));
        Assert.True(mean.DistanceTo(new(820, 700)) < 1e-5);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e4)]
    public void The_unit_of_stiffness_changes_loads_only(double factor)
    {
        var piece = PinnedPiece.Of(Outlines.Crescent, Outlines.PinnedCrescent, 60, 20, 40);
        var rest = piece.Solve(Cloth, Exact);
        var other = piece.Solve(new(factor, 0.6 * factor, 0.4, 0.25 * factor, 15), Exact);
        Assert.True(rest.Converged && other.Converged);
        Assert.True(Farthest(rest.Places, other.Places) < 1e-7);
        Assert.All(rest.PinLoads.Zip(other.PinLoads), l => Assert.True(((factor * l.First) - l.Second).Length < 1e-7 * factor));
    }

    [Fact]
    public void Turning_cloth_and_pins_turns_the_answer()
    {
        var piece = PinnedPiece.Of(Outlines.Rectangle(400, 300), Outlines.Rectangle(480, 285), 50, 20, 40);
        var rest = piece.Solve(Cloth, Exact);
        Assert.Contains(rest.Stretches, s => s.State == ClothState.Wrinkled);
        var (fromTurn, toTurn) = (Affine.Turn(0.7).Then(Affine.Shift(new(100, -50))), Affine.Turn(-1.1).Then(Affine.Shift(new(-300, 900))));
        var mesh = new TriangleMesh([.. piece.Mesh.Nodes.Select(fromTurn.Map)], piece.Mesh.Triangles, piece.Mesh.Rim, piece.Mesh.RimLengthMm);
        var support = new MembraneSupport { Pins = [.. piece.Support.Pins.Select(p => p with { Mark = toTurn.Map(p.Mark) })] };
        var turned = new OrthotropicCloth(1, 0.6, 0.4, 0.25, 15 + (0.7 * 180 / Math.PI));
        var other = new MembraneSolver(mesh, turned, PinnedPiece.StitchMm).Solve(support, Exact);
        Assert.True(rest.Converged && other.Converged);
        Assert.True(Farthest([.. rest.Places.Select(toTurn.Map)], other.Places) < 1e-6);
    }

    [Fact]
    public void The_order_of_inner_nodes_does_not_matter()
    {
        var piece = PinnedPiece.Of(Outlines.Rectangle(400, 300), Outlines.Rectangle(480, 285), 50, 20, 40);
        var n = piece.Mesh.Nodes.Count;
        var rim = piece.Mesh.Rim.Count;
        var random = new Random(4);
        int[] order = [.. Enumerable.Range(0, rim), .. Enumerable.Range(rim, n - rim).OrderBy(_ => random.Next())];
        var number = new int[n];
        for (var i = 0; i < n; i++)
            number[order[i]] = i;
        var triangles = piece.Mesh.Triangles.Select(t => new Triangle(number[t.B], number[t.C], number[t.A])).OrderBy(_ => random.Next()).ToList();
        var mesh = new TriangleMesh([.. order.Select(i => piece.Mesh.Nodes[i])], triangles, piece.Mesh.Rim, piece.Mesh.RimLengthMm);
        var rest = piece.Solve(Cloth, Exact);
        var other = new MembraneSolver(mesh, Cloth, PinnedPiece.StitchMm).Solve(piece.Support, Exact);
        Assert.True(rest.Converged && other.Converged);
        Assert.True(Farthest([.. order.Select(i => rest.Places[i])], other.Places) < 1e-6);
    }

    [Fact]
    public void Any_start_ends_at_the_same_rest()
    {
        var piece = PinnedPiece.Of(Outlines.Rectangle(400, 300), Outlines.Rectangle(480, 285), 50, 20, 40);
        var solver = new MembraneSolver(piece.Mesh, Cloth, PinnedPiece.StitchMm);
        var rest = solver.Solve(piece.Support, Exact);
        var random = new Random(7);
        for (var trial = 0; trial < 3; trial++)
        {
            Point[] start = [.. rest.Places.Select(p => p + new Vector((40 * random.NextDouble()) - 20, (40 * random.NextDouble()) - 20))];
            var other = solver.Solve(piece.Support, Exact, start);
            Assert.True(other.Converged, $"{other.End} {other.Residual}");
            Assert.True(Farthest(rest.Places, other.Places) < 1e-6);
        }
    }

    [Fact]
    public void Pins_come_and_go_without_a_new_analysis()
    {
        var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 60, 20, 40);
        var solver = new MembraneSolver(piece.Mesh, Cloth, PinnedPiece.StitchMm);
        solver.Solve(piece.Support, Exact);
        var fewer = new MembraneSupport { Pins = [.. piece.Support.Pins.Where((_, i) => i % 2 == 0)] };
        var again = solver.Solve(fewer, Exact);
        var fresh = new MembraneSolver(piece.Mesh, Cloth, PinnedPiece.StitchMm).Solve(fewer, Exact);
        Assert.Equal(fresh.Places, again.Places);
    }

    [Fact]
    public void The_scallop_converges_as_the_mesh_is_refined()
    {
        List<double> worst = [];
        foreach (var nodes in new[] { 2, 4, 8 })
        {
            var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 50, 16.0 / nodes, 80.0 / nodes, nodes);
            var rest = piece.Solve(Cloth);
            Assert.True(rest.Converged);
            worst.Add(new FreeEdge(piece.Mesh, piece.Pinned).Gaps(piece.Support, rest).Max(g => g.ScallopMm));
        }

        var (first, second) = (worst[1] - worst[0], worst[2] - worst[1]);
        Assert.True(Math.Abs(second) < 0.7 * Math.Abs(first), string.Join(' ', worst));
        Assert.True(Math.Abs(worst[0] - worst[2]) < 0.1 * worst[2], string.Join(' ', worst));
    }

    [Fact]
    public void Says_when_it_has_not_converged()
    {
        var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 60, 20, 40);
        Assert.Equal(EquilibriumEnd.StepLimit, piece.Solve(Cloth, new() { MostSteps = 2 }).End);
        Assert.Equal(EquilibriumEnd.TimeLimit, piece.Solve(Cloth, new() { TimeIsUp = new(canceled: true) }).End);
        Assert.False(piece.Solve(Cloth, new() { MostSteps = 2 }).Converged);
    }

    [Fact]
    public void Tells_of_its_steps_and_stops_when_asked()
    {
        var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 60, 20, 40);
        var solver = new MembraneSolver(piece.Mesh, Cloth, PinnedPiece.StitchMm);
        var told = new List<EquilibriumStep>();
        var rest = solver.Solve(piece.Support, progress: new Listener(told.Add));
        Assert.Equal(Enumerable.Range(0, rest.Steps + 1), told.Select(t => t.Number));
        Assert.Equal(rest.Residual, told[^1].Residual);
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => solver.Solve(piece.Support, progress: new Listener(_ => stop.Cancel()), cancellation: stop.Token));
        Assert.Equal(rest.Places, solver.Solve(piece.Support).Places);
    }

    [Fact]
    public void Refuses_a_stitch_wider_than_announced()
    {
        var piece = PinnedPiece.Of(Outlines.Triangle, Outlines.PinnedTriangle, 60, 20, 40);
        Assert.Throws<ArgumentException>(() => new MembraneSolver(piece.Mesh, Cloth, 5).Solve(piece.Support));
    }

    private static FixedNode Fix(int node, Point at) => new(node, at.X, at.Y);

    private static double Farthest(IReadOnlyList<Point> a, IReadOnlyList<Point> b) => a.Zip(b, (p, q) => p.DistanceTo(q)).Max();

    private sealed class Listener(Action<EquilibriumStep> hear) : IProgress<EquilibriumStep>
    {
        public void Report(EquilibriumStep value) => hear(value);
    }
}
