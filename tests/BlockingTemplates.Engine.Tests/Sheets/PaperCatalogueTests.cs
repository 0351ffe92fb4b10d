using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Tests.Sheets;

public class PaperCatalogueTests
{
    [Theory]
    // ISO 216:2007, table of the A series.
    [InlineData("A0", 841, 1189)]
    [InlineData("A1", 594, 841)]
    [InlineData("A2", 420, 594)]
    [InlineData("A3", 297, 420)]
    [InlineData("A4", 210, 297)]
    [InlineData("A5", 148, 210)]
    [InlineData("A6", 105, 148)]
    // PWG 5101.1, media sizes of the ISO B series and of JIS P 0138.
    [InlineData("ISO B0", 1000, 1414)]
    [InlineData("ISO B4", 250, 353)]
    [InlineData("ISO B5", 176, 250)]
    [InlineData("JIS B0", 1030, 1456)]
    [InlineData("JIS B4", 257, 364)]
    [InlineData("JIS B5", 182, 257)]
    [InlineData("JIS B6", 128, 182)]
    // PWG 5101.1, further sizes.
    [InlineData("2A0", 1189, 1682)]
    [InlineData("A3 extra", 322, 445)]
    [InlineData("SRA3", 320, 450)]
    [InlineData("A4x3", 297, 630)]
    [InlineData("A1x4", 841, 2378)]
    [InlineData("A0x3", 1189, 2523)]
    public void Metric_papers_have_the_standards_sizes(string name, double shortMm, double longMm) =>
        Assert.Equal((shortMm, longMm), Millimetres(name));

    [Theory]
    // ASME Y14.1 (sizes A to F), by the encyclopaedia page on the standard and PWG 5101.1.
    [InlineData("ANSI A", 8.5, 11)]
    [InlineData("ANSI B", 11, 17)]
    [InlineData("ANSI C", 17, 22)]
    [InlineData("ANSI D", 22, 34)]
    [InlineData("ANSI E", 34, 44)]
    [InlineData("ASME F", 28, 40)]
    [InlineData("Letter", 8.5, 11)]
    [InlineData("Tabloid", 11, 17)]
    // PWG 5101.1.
    [InlineData("Legal", 8.5, 14)]
    [InlineData("Super B", 13, 19)]
    [InlineData("ARCH A", 9, 12)]
    [InlineData("ARCH C", 18, 24)]
    [InlineData("ARCH E", 36, 48)]
    [InlineData("ARCH E1", 30, 42)]
    [InlineData("ARCH E2", 26, 38)]
    [InlineData("ARCH E3", 27, 39)]
    public void Inch_papers_have_the_standards_sizes(string name, double shortIn, double longIn) =>
        Assert.Equal((Length.FromInches(shortIn), Length.FromInches(longIn)), (PaperCatalogue.Find(name)!.Short, PaperCatalogue.Find(name)!.Long));

    [Theory]
    [InlineData("A", 0, 6)]
    [InlineData("ISO B", 0, 5)]
    [InlineData("JIS B", 0, 6)]
    public void The_next_size_is_half_the_last_rounded_down(string series, int first, int last)
    {
        for (var n = first; n < last; n++)
        {
            var (narrow, wide) = Millimetres($"{series}{n}");
            Assert.Equal((Math.Floor(wide / 2), narrow), Millimetres($"{series}{n + 1}"));
        }
    }

    [Fact]
    public void A4_is_as_many_points_as_its_millimetres_make()
    {
        // Arithmetic from ISO 216 and the inch of 1959, to 0.0001 point.
        Assert.Equal(595.2756, PaperCatalogue.Find("A4")!.Short.Points, 4);
        Assert.Equal(841.8898, PaperCatalogue.Find("A4")!.Long.Points, 4);
        Assert.Equal((612, 792), (PaperCatalogue.Find("Letter")!.Short.Points, PaperCatalogue.Find("Letter")!.Long.Points));
    }

    [Fact]
    public void Names_are_found_with_capitals_or_without_and_stand_once()
    {
        Assert.Equal("Letter", PaperCatalogue.Find(" leTTer ")!.Name);
        Assert.Null(PaperCatalogue.Find("B4"));
        Assert.Equal(PaperCatalogue.All.Count, PaperCatalogue.All.Select(p => p.Name.ToUpperInvariant()).Distinct().Count());
        Assert.All(PaperCatalogue.All, p => Assert.True(p.Short <= p.Long));
    }

    [Theory]
    [InlineData("Leter", "Letter")]
    [InlineData("a 4", "A4")]
    [InlineData("jis-b4", "JIS B4")]
    [InlineData("ledgal", "Legal")]
    public void An_unknown_name_brings_the_nearest_known_one(string name, string nearest) =>
        Assert.Equal(nearest, NearestName.Of(name, PaperCatalogue.All.Select(p => p.Name)));

    private static (double Short, double Long) Millimetres(string name)
    {
        var paper = PaperCatalogue.Find(name)!;
        return (paper.Short.Millimetres, paper.Long.Millimetres);
    }
}
