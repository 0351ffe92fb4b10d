using System.Globalization;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>Where the free edge will lie beside the line asked for, its distance from that line enlarged.</summary>
internal sealed class FreeEdgePicture
{
    private const double FlatMm = 0.5;
    private const double NumberMm = 2.8;
    private const double RoomMm = 6;
    private const double MostDrawnMm = 2.4;
    private const double DotMm = 0.45;
    private static readonly double[] Distances = [1.4, 2.2, 3.2, 4.5, 6, 8, 11];
    private static readonly double[] Enlargements = [5, 2, 1];
    private readonly Plan _plan;
    private readonly ClothPlan _cloth;
    private readonly FramePlacing _placing;
    private readonly Box _box;
    private readonly TakenPlaces _taken = new();

    public FreeEdgePicture(Plan plan, ClothPlan cloth, Box box)
    {
        (_plan, _cloth, _box) = (plan, cloth, box);
        _placing = FramePlacing.Fit(Box.Around(plan.Pins.Pinned.Ring(FlatMm)), box.Grown(-RoomMm));
        var most = cloth.GapsOffLine.Select(g => Math.Abs(g.ScallopMm)).DefaultIfEmpty(0).Max();
        Enlarged = most > 0 ? Enlargements.FirstOrDefault(e => e * _placing.Scale * most <= MostDrawnMm, 1) : 1;
    }

    /// <summary>The line asked for.</summary>
    public static Stroke Asked { get; } = new(0.2, 0.35, [1.2, 0.8]);

    /// <summary>The line found.</summary>
    public static Stroke Found { get; } = new(0.4);

    /// <summary>A gap whose line the cloth does not determine.</summary>
    public static Stroke Slack { get; } = new(1.6, 0.6);

    /// <summary>How many times the distance from the line is drawn larger than the piece.</summary>
    public double Enlarged { get; }

    public IEnumerable<Element> Draw()
    {
        var ring = _plan.Pins.Pinned.Ring(FlatMm).Select(_placing.On).ToList();
        foreach (var gap in _cloth.Gaps.Where(g => g.Determined == false))
            yield return new PathElement(PathSteps.Polyline(Along(gap).Select(_placing.On), false), Slack);
        yield return new PathElement(PathSteps.Polyline(ring, true), Asked);
        for (var i = 0; i < ring.Count; i++)
            _taken.AddLeader(ring[i], ring[(i + 1) % ring.Count]);
        foreach (var (gap, line) in _cloth.GapsOffLine.Zip(_cloth.OffLine))
        {
            List<Point> drawn = [.. line.Select(p => Enlarge(p, gap))];
            for (var i = 1; i < drawn.Count; i++)
                _taken.AddLeader(drawn[i - 1], drawn[i]);
            yield return new PathElement(PathSteps.Polyline(drawn, false), Found);
        }

        foreach (var mark in _plan.Pins.Marks)
            yield return new PathElement(PathSteps.Circle(_placing.On(mark.At), DotMm), null, new Fill());
        foreach (var text in _cloth.Edges.Select(h => h?.Worst).OfType<MarkGap>().Where(g => Math.Abs(g.ScallopMm) > ClothPlan.OffLineMm).Select(Label).OfType<TextElement>())
            yield return text;
    }

    /// <summary>A gap's two marks and how far the edge lies off its line between them: outside, or where there is no room inside.</summary>
    private TextElement? Label(MarkGap gap)
    {
        var words = string.Create(CultureInfo.InvariantCulture, $"{gap.From}-{gap.To}: {LengthWords.Of(Length.FromMillimetres(Math.Abs(gap.ScallopMm)), _plan.Project.Units)}");
        double width = TextMeasure.AdvanceMm(words, NumberMm, FontWeight.Bold), height = NumberMm * TextMeasure.FigureHeight(FontWeight.Bold);
        var at = _placing.On(AtArc(gap.MiddleMm));
        var outward = (_plan.Pins.Marks[gap.From - 1].Outward + _plan.Pins.Marks[gap.To - 1].Outward).Unit;
        foreach (var (toward, far) in from v in new[] { outward, -outward } from d in Distances select (v, d))
        {
            var box = Box.About(at + ((far + (Math.Abs(toward.X) * width / 2) + (Math.Abs(toward.Y) * height / 2)) * toward), width, height);
            if (!_box.Holds(box) || !_taken.IsFree(box.Grown(0.7)))
                continue;
            _taken.Add(box);
            return new(words, new(box.Left, box.Lower), NumberMm, FontWeight.Bold);
        }

        return null;
    }

    /// <summary>A place of the free edge on the page, its distance from the nearest place of the outline enlarged.</summary>
    private Point Enlarge(Point at, MarkGap gap)
    {
        var nearest = Along(gap).Zip(Along(gap).Skip(1)).Select(s => NearestOn(s.First, s.Second, at)).MinBy(p => p.DistanceTo(at));
        return _placing.On(nearest) + (Enlarged * _placing.Scale * (at - nearest));
    }

    private static Point NearestOn(Point a, Point b, Point p)
    {
        var along = b - a;
        var squared = along.Dot(along);
        return squared == 0 ? a : a.Toward(b, Math.Clamp((p - a).Dot(along) / squared, 0, 1));
    }

    /// <summary>The pinned outline from mark to mark of a gap.</summary>
    private IEnumerable<Point> Along(MarkGap gap)
    {
        const int Parts = 24;
        return Enumerable.Range(0, Parts + 1).Select(k => AtArc(gap.FromMm + (gap.WidthMm * k / Parts)));
    }

    private Point AtArc(double mm)
    {
        var edges = _plan.Pins.Pinned.Edges;
        var left = mm % _plan.Pins.Pinned.Length;
        foreach (var edge in edges)
        {
            if (left <= edge.Curve.Length)
                return edge.Curve.At(Math.Clamp(left / edge.Curve.Length, 0, 1));
            left -= edge.Curve.Length;
        }

        return edges[^1].Curve.End;
    }
}
