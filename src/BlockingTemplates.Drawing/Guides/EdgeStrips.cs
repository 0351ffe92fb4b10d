using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Each edge at its true unblocked length with a numbered tick for every mark, in pieces as long as the paper.</summary>
internal sealed class EdgeStrips
{
    private const double StripMm = 22;
    private const double NumberMm = 5;
    private const double CountMm = 3;
    private const double LetterMm = 4.5;
    private const double TabMm = 8;
    private const double CutMm = 2.2;
    private const double WordsMm = 3;
    private readonly Plan _plan;
    private readonly PageFlow _flow;
    private readonly double _true;

    private EdgeStrips(Plan plan, Guide guide, Paper reading)
    {
        _plan = plan;
        // Strips lie along the long side of the paper.
        _flow = new(reading.Long.Millimetres, reading.Short.Millimetres, "strips", "Edge strips", 12);
        _true = reading == guide.Paper ? 1 / guide.Check.AlongLong : 1;
    }

    /// <summary>The pages; none without an unblocked outline.</summary>
    public static IReadOnlyList<Page> Draw(Plan plan, Guide guide, Paper reading)
    {
        if (plan.Pins.LayLine is null)
            return [];
        var strips = new EdgeStrips(plan, guide, reading);
        strips.Draw();
        return strips._flow.Finish();
    }

    private void Draw()
    {
        _flow.Paragraph("Edge strips", TextStyle.Title);
        _flow.Paragraph("Each edge at its true unblocked length (over the valleys where it has points), as its outside is seen from above. Cut the strips out and join their pieces at the letters. Lay a strip along its edge, unstretched, and hang a marker with the number at each tick before the first pin.", TextStyle.Body);
        if (_plan.Piece.MeasuredDry is not null)
            _flow.Paragraph("The piece was measured dry: these strips are as long as its dry edges. Hang the markers before it is wetted.", TextStyle.Strong);
        _flow.Gap(2);
        for (var i = 0; i < _plan.Pins.Edges.Count; i++)
            Edge(i);
        MarkerList();
    }

    private void Edge(int index)
    {
        var edge = _plan.Pins.Edges[index];
        var length = edge.TapeMm!.Value;
        var most = Math.Floor(((_flow.Column.Width - TabMm - 2) / _true / 10) - 1e-9) * 10;
        var pieces = (int)Math.Ceiling((length / most) - 1e-9);
        var marks = Ticks(index);
        for (var piece = 0; piece < pieces; piece++)
        {
            double from = piece * most, to = Math.Min(length, from + most);
            var box = _flow.Take(StripMm);
            _flow.Draw(Strip(edge, index, marks, from, to, piece, pieces, box));
        }
    }

    /// <summary>Marks along an edge from its first corner to its last, both corners included.</summary>
    private List<(double Along, Mark Mark)> Ticks(int index)
    {
        var edge = _plan.Pins.Edges[index];
        var next = (index + 1) % _plan.Pins.Edges.Count;
        List<(double Along, Mark Mark)> ticks = [.. _plan.Pins.Marks.Where(m => m.Edge == index).Select(m => (edge.OnTape(m.Fraction)!.Value, m)).OrderBy(t => t.Item1)];
        if (_plan.Pins.Marks.FirstOrDefault(m => m.Edge == next && m.IsCorner) is { } end)
            ticks.Add((edge.TapeMm!.Value, end));
        return ticks;
    }

    private IEnumerable<Element> Strip(EdgePlan edge, int index, List<(double Along, Mark Mark)> ticks, double from, double to, int piece, int pieces, Box box)
    {
        var left = box.Left + 1;
        var line = box.Lower + 9;
        var right = left + ((to - from) * _true);
        yield return new PathElement(PathSteps.Rectangle(new(left, box.Lower + 1.2, right + (piece < pieces - 1 ? TabMm : 0), box.Upper)), GuideInk.Rule);
        yield return new PathElement(PathSteps.Line(new(left, line), new(right, line)), GuideInk.Outline);
        var taken = new List<Box>();
        if (piece > 0)
        {
            taken.Add(Box.About(new(left + 2.6, box.Lower + CutMm + (LetterMm / 2)), LetterMm, LetterMm));
            yield return Letter(piece - 1, new(left + 2.6, box.Lower + CutMm));
        }

        if (piece < pieces - 1)
        {
            yield return new PathElement(PathSteps.Line(new(right, box.Lower + 1.2), new(right, box.Upper)), GuideInk.SheetCut);
            yield return Letter(piece, new(right + 2.6, box.Lower + CutMm));
            yield return new TextElement("glue", new(right + 1, line + 3), 2.8, Grey: 0.3);
        }

        var words = piece == 0
            ? $"{edge.Name} edge, from {_plan.Pins.Pinned.Corners[index].Name}: {LengthWords.Of(Length.FromMillimetres(edge.TapeMm!.Value), _plan.Project.Units)}"
            : $"{edge.Name} edge";
        // A strip shorter than its words has them at its right.
        var end = right + (piece < pieces - 1 ? TabMm : 0);
        var beside = left + 6 + TextMeasure.AdvanceMm(words, WordsMm) > end - 1;
        yield return new TextElement(words, beside ? new(end + 2, line - 1) : new(left + 6, box.Lower + CutMm), WordsMm, Grey: 0.1);
        foreach (var (along, mark) in ticks.Where(t => t.Along >= from - 1e-9 && t.Along <= to + 1e-9))
        {
            var x = left + ((along - from) * _true);
            yield return new PathElement(PathSteps.Line(new(x, line), new(x, line + 4)), GuideInk.Cross);
            var number = mark.Number.ToString(CultureInfo.InvariantCulture);
            var width = TextMeasure.AdvanceMm(number, NumberMm, FontWeight.Bold);
            var centre = Math.Clamp(x, left + (width / 2) + 0.4, Math.Max(left + (width / 2) + 0.4, right - (width / 2) - 0.4));
            var own = new Box(centre - (width / 2), line + 4.6, centre + (width / 2), line + 4.6 + NumberMm);
            if (taken.Exists(t => t.Overlaps(own.Grown(0.3))))
                own = own.Moved(new(0, 4.2));
            taken.Add(own);
            yield return new TextElement(number, new(centre, own.Lower), NumberMm, FontWeight.Bold, TextAlign.Centre);
            if (mark.Count is { } count && mark.Edge == index && PinTable.Stitch(mark) is var stitch)
            {
                var half = TextMeasure.AdvanceMm(stitch, CountMm) / 2;
                var at = Math.Clamp(x, left + half + 0.4, Math.Max(left + half + 0.4, right - half - 0.4));
                var below = new Box(at - half, line - 3.6, at + half, line - 1);
                if (count > 0 && !taken.Exists(t => t.Overlaps(below.Grown(0.4))))
                {
                    taken.Add(below);
                    yield return new TextElement(stitch, new(at, line - 3.3), CountMm, Align: TextAlign.Centre, Grey: 0.1);
                }
            }
        }
    }

    private void MarkerList()
    {
        var counted = Enumerable.Range(0, _plan.Pins.Edges.Count).Where(i => _plan.Pins.Edges[i].Treatment.Count is not null).ToList();
        if (counted.Count == 0)
            return;
        _flow.Heading("Markers by stitch");
        foreach (var index in counted)
        {
            var edge = _plan.Pins.Edges[index];
            var what = edge.Treatment.Of == CountedIn.Rows ? "row" : "stitch";
            var list = Ticks(index).Where(t => t.Mark.Edge == index).Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Mark.Number} at {Count(t.Mark.Count ?? 0)}"));
            _flow.Point(string.Create(CultureInfo.InvariantCulture, $"{edge.Name} edge, {what} counted from {_plan.Pins.Pinned.Corners[index].Name} (0) to {edge.Treatment.Count}; marker number at {what}: {string.Join(", ", list)}.{(StitchRepeat.Of(_plan.Pins, index) is { } repeat ? $" Marks at {repeat}." : "")}"));
        }
    }

    private static string Count(double count) => count == Math.Floor(count) ? count.ToString("0", CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(count):0}/{Math.Ceiling(count):0}");

    private static TextElement Letter(int joint, Point at) => new(((char)('a' + (joint % 26))).ToString(), at, LetterMm, FontWeight.Bold, TextAlign.Centre);
}
