using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The lay line with a numbered tick where the edge point of each mark lies before the first pin.</summary>
internal sealed class LayLinePicture
{
    private const double SizeMm = 4.2;
    private const double TickMm = 1.8;
    private readonly IReadOnlyList<SeenLine> _lines;
    private readonly List<(Point From, Point To)> _ticks = [];
    private readonly List<(Sheet Sheet, TextElement Text)> _numbers = [];

    public LayLinePicture(IReadOnlyList<Mark> marks, Outline line, IEnumerable<SeenLine> drawn, SheetLayout sheets, TakenPlaces taken)
    {
        _lines = [.. drawn];
        foreach (var mark in marks)
        {
            if (mark.Rest is not { } rest)
                continue;
            var outward = line.Edges[mark.Edge].Curve.Outward(mark.RestFraction);
            _ticks.Add((rest - (TickMm * outward), rest + (TickMm * outward)));
            var text = mark.Number.ToString(CultureInfo.InvariantCulture);
            double width = TextMeasure.AdvanceMm(text, SizeMm), height = TextMeasure.SizeForFigures(1) is var em ? SizeMm / em : SizeMm;
            foreach (var centre in Spots(rest, outward, width, height))
            {
                var box = Box.About(centre, width, height);
                if (sheets.SheetHolding(box.Grown(0.3)) is not { } sheet || !taken.IsFree(box.Grown(0.5)))
                    continue;
                taken.Add(box);
                _numbers.Add((sheet, new(text, new(box.Left, box.Lower), SizeMm, Grey: 0.15)));
                break;
            }
        }
    }

    public IReadOnlyList<Element> On(Sheet sheet, Box box) =>
    [
        .. _lines.SelectMany(l => l.In(box)),
        .. _ticks.Where(t => SegmentBox.Meets(t.From, t.To, box.Grown(1))).Select(t => new PathElement(PathSteps.Line(t.From, t.To), GuideInk.LayTick)),
        .. _numbers.Where(n => n.Sheet == sheet).Select(n => n.Text),
    ];

    private static IEnumerable<Point> Spots(Point rest, Vector outward, double width, double height)
    {
        foreach (var far in new[] { 2.4, 5, 8 })
        {
            foreach (var along in new[] { 0.0, -3.5, 3.5, -7, 7 })
            {
                var off = far + (Math.Abs(outward.X) * width / 2) + (Math.Abs(outward.Y) * height / 2);
                yield return rest - (off * outward) + (along * outward.TurnedLeft);
            }
        }
    }
}
