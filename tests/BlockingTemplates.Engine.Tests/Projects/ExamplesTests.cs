using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine.Tests.Projects;

public class ExamplesTests
{
    public static TheoryData<string> All => [.. Directory.GetFiles(Path.Combine(Reading.Shared, "examples"), "*.jsonc").Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal)];

    private static Project Read(string name)
    {
        var reading = Reading.Reader.Read(File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", name)));
        Assert.Empty(reading.Findings.Problems);
        Assert.Empty(reading.Findings.Notes);
        return reading.Project!;
    }

    [Theory]
    [MemberData(nameof(All))]
    public void An_example_has_no_problem_and_says_that_it_is_invented(string name)
    {
        var project = Read(name);
        Assert.Contains("(invented example)", project.Title, StringComparison.Ordinal);
        Assert.StartsWith("// Invented data", File.ReadAllText(Path.Combine(Reading.Shared, "examples", name)), StringComparison.Ordinal);
        Assert.NotNull(project.Unblocked);
    }

    [Fact]
    public void The_lace_triangle_is_read_as_given()
    {
        var project = Read("lace-triangle.jsonc");
        Assert.Equal([1480.0, 740], project.Finished.Sizes.Values.Select(l => l.Millimetres));
        Assert.Equal(1280, project.Unblocked!.Sides["top"].Millimetres);
        Assert.Equal(-30, project.Unblocked.Bows["top"].Millimetres);
        Assert.Equal(180, project.Treatment("top").Count);
        Assert.Equal((FabricKind.Lace, "wool"), (project.Fabric.Kind!.Value, project.Fabric.Fibre!.Name));
        Assert.Equal(new SpringBack(0.03, 0.03), project.Fabric.SpringBack);
        Assert.True(project.EvenOut);
    }

    [Fact]
    public void The_rectangle_is_read_in_inches_and_its_lower_edge_must_shrink()
    {
        var project = Read("rectangle-with-short-edge.jsonc");
        Assert.Equal([20.5, 60], project.Finished.Sizes.Values.Select(l => l.Inches));
        var unblocked = project.Unblocked!;
        Assert.Equal([21.25, 54.75, 18.375, 54.75], unblocked.Sides.Values.Select(l => l.Inches));
        Assert.Equal(-0.25, unblocked.Bows["left"].Inches);
        Assert.Equal(58.25, unblocked.Diagonal!.Length.Inches);
        Assert.True(unblocked.Sides["lower"].Inches > project.Finished.Sizes["width"].Inches * 1.02);
        Assert.Equal("middle of top", project.Pins.Anchor);
    }

    [Fact]
    public void The_crescent_is_read_with_bows_offsets_and_points()
    {
        var project = Read("crescent-outline.jsonc");
        var finished = project.Finished;
        Assert.Equal(1600, finished.Corners!.Max(c => c.X.Millimetres) - finished.Corners!.Min(c => c.X.Millimetres));
        Assert.True(finished.Edges![2].Bow!.Value.Millimetres < 0);
        Assert.Equal(5, project.Unblocked!.Edges![2].Offsets!.Count);
        Assert.Equal(656, project.Unblocked.Edges[2].Offsets![2].Along.Millimetres);
        Assert.Single(project.Unblocked.Edges[1].Points!);
        Assert.Equal((600.0, 300.0), (project.Mats.Width.Millimetres, project.Mats.Height.Millimetres));
    }
}
