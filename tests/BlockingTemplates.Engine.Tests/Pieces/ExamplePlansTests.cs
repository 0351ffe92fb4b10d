using System.Collections.Concurrent;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Tests.Projects;

namespace BlockingTemplates.Engine.Tests.Pieces;

public class ExamplePlansTests
{
    /// <summary>Wider than the figures of the guide's font, which stands in a later stage.</summary>
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);

    public static TheoryData<string> All => ExamplesTests.All;

    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Plans = new();

    private static Project Read(string example) =>
        Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example))).Project!;

    /// <summary>The plan of an example, made once for all tests.</summary>
    private static Plan PlanOf(string example) => Plans.GetOrAdd(example, e => new(() => Planned(Read(e)))).Value;

    private static Plan Planned(Project project)
    {
        var findings = new Findings(project.Units);
        var plan = Planner.Plan(project, Style, findings, Computation.GeometryOnly);
        Assert.Empty(findings.Problems);
        return plan!;
    }

    [Fact]
    public void Every_kind_of_piece_has_an_example()
    {
        var shown = All.Cast<object[]>().Select(row => Read((string)row[0]).Kind).ToHashSet();
        foreach (var kind in PieceKinds.All)
            Assert.True(shown.Contains(kind), kind.Shape);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void An_example_is_planned_with_room_for_every_number(string example)
    {
        var plan = PlanOf(example);
        Assert.NotNull(plan.Piece.Unblocked);
        foreach (var guide in plan.Guides)
        {
            Assert.Equal(plan.Pins.Marks.Count, guide.Numbers.Count);
            Assert.DoesNotContain(guide.Numbers, n => n.IsCrowded);
        }

        // Each mark lies on the pinned outline, and none twice.
        Assert.Equal(plan.Pins.Marks.Count, plan.Pins.Marks.Select(m => (m.Edge, m.Fraction)).Distinct().Count());
        Assert.All(plan.Pins.Marks, m => Assert.InRange(m.At.DistanceTo(plan.Pins.Pinned.Edges[m.Edge].Curve.At(m.Fraction)), 0, 1e-6));
    }

    [Theory]
    [InlineData("asymmetric-triangle.jsonc", false)]
    [InlineData("bias-scarf.jsonc", false)]
    [InlineData("half-circle-shawl.jsonc", true)]
    [InlineData("hexagon-motif.jsonc", true)]
    [InlineData("kite-shawl.jsonc", true)]
    [InlineData("lace-collar.jsonc", true)]
    [InlineData("lace-crescent.jsonc", true)]
    [InlineData("leaf-shawl.jsonc", true)]
    [InlineData("octagon-doily.jsonc", true)]
    [InlineData("pointed-doily.jsonc", true)]
    [InlineData("round-doily.jsonc", true)]
    [InlineData("scalloped-shawl.jsonc", true)]
    [InlineData("striped-stole.jsonc", true)]
    [InlineData("sweater-front.jsonc", true)]
    [InlineData("sweater-sleeve.jsonc", true)]
    [InlineData("trapezoid-wrap.jsonc", true)]
    public void Marks_are_symmetric_where_the_piece_is(string example, bool isSymmetric)
    {
        var plan = PlanOf(example);
        Assert.Equal(isSymmetric, plan.Pins.Mirror is not null);
        if (plan.Pins.Mirror is not { } mirror)
            return;
        foreach (var mark in plan.Pins.Marks)
            Assert.Contains(plan.Pins.Marks, m => m.At.DistanceTo(mirror.Image(mark.At)) < 0.05);
    }

    [Fact]
    public void Even_spacing_runs_through_the_corners_of_a_round_piece()
    {
        var plan = PlanOf("round-doily.jsonc");
        var around = plan.Pins.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction).ToList();
        var steps = around.Select((m, i) => m.At.DistanceTo(around[(i + 1) % around.Count].At)).ToList();
        Assert.InRange(steps.Max() / steps.Min(), 1, 1.001);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_same_piece_as_a_general_outline_gives_the_same_plan(string example)
    {
        var named = Read(example);
        var plan = PlanOf(example);
        // Points are put on either by the same entry of their edge, and stand on the smooth line.
        var smooth = PieceMaker.Make(
            new(named.Kind, named.Finished, named.Unblocked, new Dictionary<string, EdgeTreatment>(), named.FaceUp, named.MeasuredFaceUp, named.EvenOut, named.Fabric), new Findings())!;
        var outline = Planned(named with
        {
            Kind = PieceKinds.Find("outline")!,
            EvenOut = false,
            Finished = AsOutline(smooth.Finished, "piece.finished"),
            Unblocked = AsOutline(smooth.MeasuredDry ?? smooth.Unblocked!, "piece.unblocked"),
            Pins = named.Pins with { Anchor = plan.Pins.Anchor.Name },
        });
        // Arcs are given by their bow, ellipses and bells by points within 0.01 mm of them. Places are compared from the first
        // mark: the frame's origin follows the box of a ring flattened to 0.05 mm. The order of pinning hangs on which of two
        // equal gaps is the wider, so it is compared where nothing was rounded.
        const double Near = 0.05;
        var isExact = new[] { smooth.Finished, smooth.Unblocked! }.SelectMany(o => o.Edges).All(e => e.Curve is StraightEdge or CircularArc);
        var (byName, byOutline) = (AlongTheEdge(plan), AlongTheEdge(outline));
        Assert.Equal(byName.Count, byOutline.Count);
        foreach (var (a, b) in byName.Zip(byOutline))
        {
            Assert.Equal((a.Edge, a.Count), (b.Edge, b.Count));
            Assert.InRange((a.At - byName[0].At - (b.At - byOutline[0].At)).Length, 0, Near);
            Assert.InRange(a.Pull!.Value.Length - b.Pull!.Value.Length, -Near, Near);
            if (isExact)
                Assert.Equal((a.Number, a.Round), (b.Number, b.Round));
        }

        Assert.Equal(plan.Mats.Mats.Count, outline.Mats.Mats.Count);
        Assert.Equal(plan.Guides.Select(g => g.Count), outline.Guides.Select(g => g.Count));
    }

    private static List<Mark> AlongTheEdge(Plan plan) => [.. plan.Pins.Marks.OrderBy(m => m.Edge).ThenBy(m => m.Fraction)];

    private static Measurements AsOutline(Outline outline, string path) => new()
    {
        Path = path,
        Corners = [.. outline.Corners.Select((c, i) => new CornerEntry(Mm(outline.CornerAt(i).X), Mm(outline.CornerAt(i).Y), c.Name, c.Smooth))],
        Edges = [.. outline.Edges.Select(AsEntry)],
    };

    private static EdgeEntry AsEntry(Edge edge)
    {
        Point from = edge.Curve.Start, to = edge.Curve.End;
        var bow = (edge.Curve.At(0.5) - from.Toward(to, 0.5)).Dot((to - from).Unit.TurnedRight);
        return edge.Curve is StraightEdge or CircularArc
            ? new(edge.Name, Mm(bow))
            : new(edge.Name, Points: [.. edge.Curve.Flatten(0.01).Skip(1).SkipLast(1).Select(p => (Mm(p.X), Mm(p.Y)))]);
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
