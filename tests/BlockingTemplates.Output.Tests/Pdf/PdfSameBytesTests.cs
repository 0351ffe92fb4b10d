using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Output.Pdf;

namespace BlockingTemplates.Output.Tests.Pdf;

public partial class PdfSameBytesTests
{
    [Fact]
    public void The_same_document_gives_the_same_bytes() => Assert.Equal(PdfWriter.Write(Guide(3)), PdfWriter.Write(Guide(3)));

    [Fact]
    public void Documents_written_at_the_same_time_are_the_same_as_one_after_another()
    {
        var serial = Enumerable.Range(0, 24).Select(n => PdfWriter.Write(Guide(n))).ToArray();
        Assert.Equal(24, serial.Select(Convert.ToHexString).Distinct().Count());
        for (var round = 0; round < 4; round++)
        {
            var parallel = new byte[serial.Length][];
            var threads = Enumerable.Range(0, 8).Select(t => new Thread(() =>
            {
                for (var n = t; n < serial.Length; n += 8) parallel[n] = PdfWriter.Write(Guide(n));
            })).ToList();
            threads.ForEach(t => t.Start());
            threads.ForEach(t => t.Join());
            Assert.Equal(serial, parallel);
        }
    }

    [Fact]
    public void Files_that_differ_have_different_identities_and_subsets_different_tags()
    {
        var a = Encoding.Latin1.GetString(PdfWriter.Write(Guide(1)));
        var b = Encoding.Latin1.GetString(PdfWriter.Write(Guide(2)));
        var sameText = Encoding.Latin1.GetString(PdfWriter.Write(Guide(1) with { Title = "another title" }));
        Assert.NotEqual(Id(a), Id(b));
        Assert.NotEqual(Id(a), Id(sameText));
        Assert.NotEqual(Tag(a), Tag(b));
        Assert.Equal(Tag(a), Tag(sameText));

        static string Id(string pdf) => IdPattern().Match(pdf).Groups[1].Value is { Length: 32 } id ? id : throw new InvalidOperationException("no id");
        static string Tag(string pdf) => TagPattern().Match(pdf).Groups[1].Value is { Length: 6 } tag ? tag : throw new InvalidOperationException("no tag");
    }

    private static Document Guide(int n) => new(
        $"Guide {n}",
        [.. Enumerable.Range(0, 3).Select(p => new Page(210, 297,
        [
            new TextElement($"page {p} of guide {n} {(char)('α' + n)} {(char)('A' + n)}", new(20, 20), 5 + (0.1 * n)),
            new TextElement($"{n}", new(20, 40), 8, FontWeight.Bold),
            new LayerElement(new Layer($"layer {n % 3}"), [.. Enumerable.Range(0, 20).Select(i => new SymbolElement(CrossScene.Cross, new(10 + (9 * i), 100 + n), i))]),
        ], $"{n}-{p}", p == 0 ? "Start" : null))]);

    [GeneratedRegex(@"/ID\[<([0-9A-F]{32})><\1>\]")]
    private static partial Regex IdPattern();

    [GeneratedRegex(@"/FontName/([A-Z]{6})\+AtkinsonHyperlegibleNext-(Regular|Bold)\b")]
    private static partial Regex TagPattern();
}
