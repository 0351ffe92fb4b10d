using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using static BlockingTemplates.Engine.Tests.Projects.Files.Drawn;

namespace BlockingTemplates.Engine.Tests.Projects.Files;

// The path of a drawing: its commands, curves and arcs.
public class DrawnPathTests
{
    // The same rectangle, 100 mm by 50 mm, in the path commands of SVG 1.1, section 8.3.
    [Theory]
    [InlineData("M10 20 L110 20 L110 70 L10 70 Z")]
    [InlineData("m10,20 100,0 0,50 -100,0z")]
    [InlineData("M10 20H110V70H10Z")]
    [InlineData("M1e1.2e2h+100v50h-1e2z")]
    [InlineData("M10 20l100 0 0 50-100 0 0-50")]
    [InlineData("M 10 20 L 110 20 110 70 10 70 L 10 20 Z")]
    [InlineData("M10 70 L10 20 L110 20 L110 70 z")]
    [InlineData("M10 20C40 20 80 20 110 20L110 70Q60 70 10 70z")]
    public void A_rectangle_is_read_alike_in_every_command(string d)
    {
        var outline = Read(Svg(d));
        Assert.Equal(4, outline.Edges.Count);
        Near(300, outline.Length);
        Near(5000, outline.SignedArea());
        var box = Box.Around(outline.Ring());
        Near(10, box.Left);
        Near(230, box.Lower); // y up from the drawing's lower side: 300 - 70
    }

    // Arcs: SVG 1.1, appendix F.6. Circles and ellipses by their areas; the large and the small arc of a chord by the segment formulas
    // (chord 21, height 6: arc 25.308373, area 89.254148; Circular Sections, matheass.eu help text).
    [Theory]
    [InlineData("M100 150A50 50 0 0 1 200 150A50 50 0 0 1 100 150Z", 7853.981634, 314.159265)]
    [InlineData("M100 150a50 50 0 1 0 100 0a50 50 0 1 0-100 0z", 7853.981634, 314.159265)]
    [InlineData("M100 150a50,50 0 01100 0 50,50 0 01-100 0z", 7853.981634, 314.159265)]
    [InlineData("M100 150A1 1 0 0 1 200 150A1 1 0 0 1 100 150Z", 7853.981634, 314.159265)]
    [InlineData("M100 150A121.875 121.875 0 0 1 310 150Z", 8925.4148, 463.08373)]
    [InlineData("M100 150A50 25 0 0 1 200 150A50 25 0 0 1 100 150Z", 3926.990817, 242.211206)]
    [InlineData("M150 100A50 25 90 0 1 150 200A50 25 90 0 1 150 100Z", 3926.990817, 242.211206)]
    public void Arcs_have_the_published_lengths_and_areas(string d, double area, double length)
    {
        var outline = Read(Svg(d));
        Near(length, outline.Length, 2e-5 * length);
        Near(area, outline.SignedArea(0.0001), 2e-5 * area);
    }

    // The large arc of chord 210 in the circle of radius 121.875: the whole circle less the segment.
    [Fact]
    public void The_large_arc_is_the_rest_of_the_circle()
    {
        var outline = Read(Svg("M100 150A121.875 121.875 0 1 1 310 150Z"));
        Near((Math.PI * 121.875 * 121.875) - 8925.4148, outline.SignedArea(0.0001), 1);
    }

    // Control points (0,0) (0,90) (120,90) (120,0): y = 270 t(1-t), dx = 720 t(1-t) dt, so the area is 194400 times the integral of
    // t^2 (1-t)^2 = 1/30, which is 6480. Split in the middle (de Casteljau) it is the same curve.
    [Theory]
    [InlineData("M100 200C100 110 220 110 220 200Z")]
    [InlineData("M100 200c0-90 120-90 120 0z")]
    [InlineData("M100 200C100 155 130 132.5 160 132.5S220 155 220 200Z")]
    public void A_cubic_curve_keeps_its_area_whole_or_split(string d) => Near(6480, Read(Svg(d)).SignedArea(0.0001), 0.1);

    // Archimedes, Quadrature of the Parabola: two thirds of chord times height; a quadratic curve is a parabola of
    // half its control's height: 2/3 x 120 x 45. Split in the middle it is the same curve.
    [Theory]
    [InlineData("M100 200Q160 110 220 200Z", 3600)]
    [InlineData("M100 200Q130 155 160 155T220 200Z", 3600)]
    public void A_quadratic_curve_is_a_parabola(string d, double area)
    {
        var outline = Read(Svg(d));
        Near(area, outline.SignedArea(0.0001), 0.1);
    }

    [Theory]
    [InlineData("M10 20 L110 20 L110 70", "The path is open: its ends lie 111.8 mm apart")]
    [InlineData("10 20 L110 20", "'1' is no path command, at character 1")]
    [InlineData("L10 20", "does not begin with a move")]
    [InlineData("M10 20 L110", "A number is missing")]
    [InlineData("M10 20 L110 20,,5 5z", "A number is missing")]
    [InlineData("M10 20 X110", "'X' is no path command, at character 8")]
    [InlineData("M10 20 A5 5 0 2 0 9 9z", "An arc's flag is 0 or 1")]
    [InlineData("M10 20 L1e999 20z", "beyond all bounds")]
    [InlineData("M10 20h9v9z M50 50h9v9z", "The path has 2 parts")]
    [InlineData("", "The path has 0 parts")]
    public void Wrong_path_data_is_refused_with_its_place(string d, string what)
    {
        var problem = Refused(Svg(d));
        Assert.Equal("piece.finished.file", problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    // The slow way: the same arcs as a chain of 720 points.
    [Fact]
    public void A_drawn_crescent_is_the_crescent_of_its_measurements()
    {
        var named = PieceKinds.Find("crescent")!.Finished(
            new() { Path = "p", Sizes = new Dictionary<string, Length> { ["wingspan"] = Length.FromMillimetres(300), ["depth"] = Length.FromMillimetres(90), ["rise"] = Length.FromMillimetres(30) } },
            new())!;
        double lower = CircularSegment.Radius(300, 120), top = CircularSegment.Radius(300, 30);
        var drawn = Read(Svg(string.Create(CultureInfo.InvariantCulture, $"M50 100A{lower:R} {lower:R} 0 0 0 350 100A{top:R} {top:R} 0 0 1 50 100Z")));
        Assert.Equal(2, drawn.Edges.Count);
        for (var i = 0; i < 2; i++)
        {
            for (var k = 0; k <= 360; k++)
                Near(0, (named.Edges[i].Curve.At(k / 360.0) + new Vector(200, 200)).DistanceTo(drawn.Edges[i].Curve.At(k / 360.0)));
        }
    }
}
