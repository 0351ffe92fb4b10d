using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Projects;

public class PairTests
{
    private static readonly NumberStyle Style = new(text => 0.85 * text.Length);

    private static readonly PairNames Names = new("left front", "right front");

    private static Project Read(string example) =>
        Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", example))).Project!;

    private static (Piece Piece, PinPlan Pins) Planned(Project project)
    {
        var findings = new Findings(project.Units);
        var piece = PieceMaker.Make(
            new(project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric) { IsMirrored = project.IsMirrored }, findings);
        var pins = PinPlanner.Plan(piece!, project.Pins, findings);
        Assert.Empty(findings.Problems);
        return (piece!, pins!);
    }

    private static Project Mirror(Project project) => project with
    {
        IsMirrored = true,
        Pins = project.Pins with { Anchor = project.Pins.Anchor is { } anchor ? LeftAndRight.Other(anchor) : null },
    };

    [Theory]
    [MemberData(nameof(ExamplesTests.All), MemberType = typeof(ExamplesTests))]
    public void The_mirrored_piece_has_the_mirror_image_of_every_mark_and_its_pull(string example)
    {
        var project = Read(example);
        // The anchor left to the tool may be another edge's middle on the mirrored piece; named, it is mirrored too.
        var named = project with { Pins = project.Pins with { Anchor = Planned(project).Pins.Anchor.Name } };
        var ((_, one), (piece, alone)) = (Planned(named), Planned(Mirror(named)));
        var other = PinPlanner.MirrorOf(one, alone, piece);
        Assert.Equal(one.Marks.Count, other.Marks.Count);
        Assert.Equal(one.Edges.Select(e => LeftAndRight.Other(e.Name)).Reverse(), other.Edges.Select(e => e.Name));
        // Both outlines lie about their anchors, so the shift between a mark and its image is the same for all.
        Vector? shift = null;
        foreach (var mark in one.Marks)
        {
            var name = LeftAndRight.Other(mark.IsCorner ? one.Pinned.Corners[mark.Edge].Name : one.Edges[mark.Edge].Name);
            Point image = new(-mark.At.X, mark.At.Y);
            var edge = one.Edges.Count - 1 - mark.Edge;
            var found = mark.IsCorner
                ? other.Marks.Single(m => m.IsCorner && other.Pinned.Corners[m.Edge].Name == name)
                : other.Marks.Where(m => m.Edge == edge && !m.IsCorner).MinBy(m => Math.Abs(m.Fraction - (1 - mark.Fraction)))!;
            shift ??= found.At - image;
            Assert.InRange((found.At - image - shift.Value).Length, 0, 0.01);
            if (!mark.IsCorner && mark.Count is { } count)
                Assert.Equal(one.Edges[mark.Edge].Treatment.Count - count, found.Count);
            if (mark.Pull is { } pull)
                Assert.InRange((found.Pull!.Value - new Vector(-pull.X, pull.Y)).Length, 0, 0.01);
        }

        Assert.Equal(other.Edges.Count, piece.Edges.Count);
    }

    [Theory]
    [InlineData("cardigan-fronts.jsonc")]
    [InlineData("asymmetric-triangle.jsonc")]
    [InlineData("striped-stole.jsonc")]
    public void Mirrored_twice_it_is_the_piece_itself(string example)
    {
        var (piece, _) = Planned(Read(example));
        var twice = piece.Mirrored().Mirrored();
        Assert.Equal(piece.Finished.Corners, twice.Finished.Corners);
        Assert.Equal(piece.Edges, twice.Edges);
        Assert.Equal(piece.Fabric, twice.Fabric);
        for (var i = 0; i < piece.Edges.Count; i++)
        {
            Assert.Equal(piece.Finished.Edges[i].Name, twice.Finished.Edges[i].Name);
            Assert.InRange(piece.Finished.Edges[i].Curve.At(0.3).DistanceTo(twice.Finished.Edges[i].Curve.At(0.3)), 0, 1e-9);
            Assert.InRange(piece.Unblocked!.Edges[i].Curve.At(0.7).DistanceTo(twice.Unblocked!.Edges[i].Curve.At(0.7)), 0, 1e-9);
        }
    }

    [Fact]
    public void A_pair_is_planned_twice_from_one_entry_and_each_has_its_name()
    {
        var reading = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "cardigan-fronts.jsonc")));
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) => Planner.Plan(project, Style, findings, Computation.GeometryOnly, mirrorOf));
        Assert.Empty(file.Findings.Problems);
        Assert.Equal([("left front", false), ("right front", true)], file.Parts.Select(p => (p.Piece, p.IsMirrored)));
        Assert.Equal(["left front", "right front"], file.Parts.Select(p => p.Plan.Project.Part));
        Assert.DoesNotContain(file.Findings.Notes, n => n.Place == "piece.pair");
    }

    [Fact]
    public void Of_a_symmetric_pair_a_note_says_that_one_guide_serves_both()
    {
        var reading = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "two-sleeves.jsonc")));
        var file = PartsPlanner.Plan(reading, (project, mirrorOf, findings) => Planner.Plan(project, Style, findings, Computation.GeometryOnly, mirrorOf));
        Assert.Equal(2, file.Parts.Count);
        var note = Assert.Single(file.Findings.Notes, n => n.Place == "piece.pair");
        Assert.Contains("right sleeve and left sleeve are alike", note.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[\"left front\"]", "piece.pair", "two pieces")]
    [InlineData("[\"left\", \"Left\"]", "piece.pair", "two different names")]
    [InlineData("[\"left\", \"\"]", "piece.pair", "two different names")]
    [InlineData("[\"left\", null]", "piece.pair[1]", "still blank")]
    [InlineData("[\"left\", 5]", "piece.pair[1]", "text")]
    [InlineData("[\"a\", \"b\", \"c\"]", "piece.pair", "3 entries")]
    [InlineData("\"left\"", "piece.pair", "names of two pieces in a list")]
    public void Wrong_names_of_a_pair_are_one_problem(string pair, string path, string what) =>
        Reading.IsSingle(Reading.Triangle(piece: $", \"pair\": {pair}"), path, what, "");

    [Fact]
    public void The_names_of_a_pair_are_read_as_given() =>
        Assert.Equal(Names, Reading.Clean(Reading.Triangle(piece: ", \"pair\": [\"left front\", \"right front\"]")).Pair);
}
