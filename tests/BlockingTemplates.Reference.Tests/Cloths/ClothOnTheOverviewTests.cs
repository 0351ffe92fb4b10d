using System.Text;
using System.Xml.Linq;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Svg;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Cloths;

public class ClothOnTheOverviewTests
{
    public static TheoryData<string> Pieces => [.. ClothPieces.All];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_svg_has_stretch_and_predicted_edge_as_hidden_layers(string piece)
    {
        var plan = Planned.InCloth(piece);
        var svg = XDocument.Parse(Encoding.UTF8.GetString(SvgWriter.Write(OverviewPicture.Draw(plan), "overview")));
        var layers = svg.Descendants().Where(e => e.Attribute("id")?.Value.StartsWith("layer-", StringComparison.Ordinal) == true).ToList();
        foreach (var name in new[] { "layer-stretch", "layer-predicted-edge" })
            Assert.Equal("none", layers.Single(l => l.Attribute("id")!.Value == name).Attribute("display")?.Value);
        // The greys lie over the mats and under all lines.
        var order = layers.Select(l => l.Attribute("id")!.Value).ToList();
        Assert.Equal(["layer-mats", "layer-stretch"], order[..2]);
        var without = Encoding.UTF8.GetString(SvgWriter.Write(OverviewPicture.Draw(Planned.Example(Planned.Triangle)), "overview"));
        Assert.DoesNotContain("layer-stretch", without, StringComparison.Ordinal);
        Assert.DoesNotContain("layer-predicted-edge", without, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_predicted_edge_is_drawn_to_scale(string piece)
    {
        var plan = Planned.InCloth(piece);
        var page = OverviewPicture.Draw(plan);
        var outline = new DrawnOutline(page.Content.OfType<LayerElement>().Single(l => l.Layer.Name == "outline and marks").Content.OfType<PathElement>().First(), plan.Pins.Pinned);
        var lines = page.Content.OfType<LayerElement>().Single(l => l.Layer.Name == "predicted edge").Content.OfType<PathElement>().ToList();
        Assert.Equal(plan.Cloth!.OffLine.Count, lines.Count);
        foreach (var (line, drawn) in plan.Cloth.OffLine.Zip(lines))
            Assert.All(line.Zip(drawn.Steps), pair => Assert.Equal(0, outline.On(pair.First).DistanceTo(pair.Second.To), 1e-6));
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Grey_lies_all_over_the_piece_but_not_on_the_name_of_a_mat(string piece)
    {
        var plan = Planned.InCloth(piece);
        var layers = OverviewPicture.Draw(plan).Content.OfType<LayerElement>().ToList();
        var names = layers.Single(l => l.Layer.Name == "mats").Content.OfType<TextElement>().ToList();
        Assert.Equal(plan.Mats.Mats.Count, names.Count);
        var painted = layers.Single(l => l.Layer.Name == "stretch").Content.OfType<PathElement>().Where(p => p is { Stroke: null, Fill: not null })
            .SelectMany(p => p.Steps.Chunk(5).Select(r => Box.Around([r[0].To, r[2].To]))).ToList();
        Assert.NotEmpty(painted);
        var boxes = names.Select(n => Drawing.Text.TextMeasure.InkBox(n.Text, n.SizeMm)!.Value.Moved(n.At - Point.Origin)).ToList();
        Assert.All(boxes, b => Assert.DoesNotContain(painted, p => p.Overlaps(b)));
        var outline = new DrawnOutline(layers.Single(l => l.Layer.Name == "outline and marks").Content.OfType<PathElement>().First(), plan.Pins.Pinned);
        var inside = plan.Cloth!.Stretch.Cells.Select(c => outline.On(c.At)).Where(p => !boxes.Exists(b => b.Grown(1.2).Holds(p)) && Box.Around(plan.Pins.Pinned.Ring().Select(outline.On)).Grown(-1).Holds(p)).ToList();
        Assert.True(inside.Count > 100);
        Assert.True(inside.Count(p => painted.Exists(b => b.Holds(p))) > 0.97 * inside.Count); // a free edge may lie beyond the outline
    }
}
