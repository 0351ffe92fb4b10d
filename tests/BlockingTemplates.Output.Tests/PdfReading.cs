using System.Globalization;
using System.Text;
using BlockingTemplates.Engine.Measure;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;
using Page = UglyToad.PdfPig.Content.Page;
using Point = BlockingTemplates.Engine.Shapes.Point;

namespace BlockingTemplates.Output.Tests;

/// <summary>Reads our PDFs back with PdfPig, in millimetres.</summary>
public static class PdfReading
{
    public static PdfDocument Open(byte[] pdf) => PdfDocument.Open(pdf, new ParsingOptions { UseLenientParsing = false });

    public static double Mm(double points) => Length.FromPoints(points).Millimetres;

    public static Point Mm(PdfPoint p) => new(Mm(p.X), Mm(p.Y));

    /// <summary>Every stroked path of one straight line.</summary>
    public static IReadOnlyList<Segment> Lines(Page page) =>
    [
        .. from path in page.Paths
           where path.IsStroked
           from stretch in path
           let lines = stretch.Commands.OfType<PdfSubpath.Line>().ToList()
           where lines.Count == 1
           select new Segment(Mm(lines[0].From), Mm(lines[0].To)),
    ];

    public static DictionaryToken Catalog(PdfDocument pdf) => pdf.Structure.Catalog.CatalogDictionary;

    public static T Get<T>(PdfDocument pdf, DictionaryToken dictionary, string key)
        where T : class, IToken
    {
        Assert.True(dictionary.TryGet(NameToken.Create(key), out var token), $"no /{key} in {dictionary}");
        return Resolve<T>(pdf, token);
    }

    public static T Resolve<T>(PdfDocument pdf, IToken token)
        where T : class, IToken
    {
        if (token is IndirectReferenceToken reference) token = pdf.Structure.GetObject(reference.Data).Data;
        return Assert.IsAssignableFrom<T>(token);
    }

    public static string Text(IToken token) => token switch
    {
        StringToken s => s.Data,
        HexToken h => h.Data,
        _ => throw new InvalidOperationException(token.ToString()),
    };

    /// <summary>Fails unless every entry of the cross-reference table points at its object: readers mend such faults in silence.</summary>
    public static void AssertTableIsRight(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var start = text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10;
        var table = int.Parse(text[start..text.IndexOf('\n', start)], CultureInfo.InvariantCulture);
        var lines = text[table..].Split('\n');
        Assert.Equal("xref", lines[0]);
        var count = int.Parse(lines[1].Split(' ')[1], CultureInfo.InvariantCulture);
        for (var i = 1; i < count; i++)
        {
            var at = int.Parse(lines[2 + i].AsSpan(0, 10), CultureInfo.InvariantCulture);
            Assert.StartsWith($"{i} 0 obj", text[at..(at + 20)], StringComparison.Ordinal);
            Assert.Equal(20, lines[2 + i].Length + 1);
        }

        Assert.StartsWith("trailer", lines[2 + count], StringComparison.Ordinal);
    }
}
