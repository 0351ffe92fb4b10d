using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>Stretch one way over the whole piece: greys with numbers, slack and overstretched regions hatched and lettered.</summary>
internal sealed class StretchPicture
{
    private const double FlatMm = 0.5;
    private const double NumberMm = 3;
    private const double LetterMm = 4.2;
    private const int MostNumbers = 9;
    private static readonly Stroke Outline = new(0.5);
    private readonly StretchMap _map;
    private readonly IReadOnlyList<NamedRegion> _regions;
    private readonly ToneScale _scale;
    private readonly FramePlacing _placing;
    private readonly List<Point> _ring;
    private readonly InsideArea _area;
    private readonly TakenPlaces _taken = new();

    public StretchPicture(Plan plan, ClothPlan cloth, IReadOnlyList<NamedRegion> regions, ToneScale scale, Box box)
    {
        (_map, _regions, _scale) = (cloth.Stretch, regions, scale);
        _placing = FramePlacing.Fit(Box.Around(plan.Pins.Pinned.Ring(FlatMm)), box);
        _ring = [.. plan.Pins.Pinned.Ring(FlatMm).Select(_placing.On)];
        _area = new(_ring);
    }

    public IEnumerable<Element> Draw(Func<StretchCell, double> value) =>
    [
        .. StretchTones.Of(_map, value, _scale, _area, _placing),
        .. _regions.SelectMany(r => RegionHatch.Hatch(r.Region, _map, _area, _placing, r.IsBeyond)),
        .. _regions.SelectMany(r => RegionHatch.Border(r.Region, _map, _placing)),
        new PathElement(PathSteps.Polyline(_ring, true), Outline),
        .. _regions.SelectMany(Letter),
        .. Numbers(value),
    ];

    /// <summary>The letter of a region, on its cell nearest its middle.</summary>
    private IEnumerable<Element> Letter(NamedRegion named)
    {
        var size = LetterMm;
        var (width, height) = (TextMeasure.AdvanceMm(named.Letter, size, FontWeight.Bold), size * TextMeasure.CapHeight(FontWeight.Bold));
        foreach (var cell in named.Region.Cells.OrderBy(c => c.At.DistanceTo(named.Region.Middle)))
        {
            var at = _placing.On(cell.At);
            var box = Box.About(at, width + 2.4, height + 2.4);
            if (!_taken.IsFree(box))
                continue;
            _taken.Add(box);
            yield return new PathElement(PathSteps.Circle(at, (Math.Max(width, height) / 2) + 1.1), new(0.3), new Fill(1));
            yield return new TextElement(named.Letter, new(at.X - (width / 2), at.Y - (height / 2)), size, FontWeight.Bold);
            yield break;
        }
    }

    /// <summary>The stretch in figures at some places far from one another, where there is room inside.</summary>
    private List<Element> Numbers(Func<StretchCell, double> value)
    {
        List<Element> numbers = [];
        // Clear of the lines round regions.
        var hatched = _regions.SelectMany(r => r.Region.Cells).SelectMany(c => from x in Enumerable.Range(-2, 5) from y in new[] { -1, 0, 1 } select (c.Column + x, c.Row + y)).ToHashSet();
        var room = _map.Cells.Where(c => c.State != ClothState.Slack && !hatched.Contains((c.Column, c.Row))).Select(c => (Cell: c, Box: NumberBox(c, value(c)))).Where(c => _area.Holds(c.Box.Grown(0.8))).ToList();
        List<Point> taken = [];
        while (taken.Count < MostNumbers && room.Count > 0)
        {
            // The highest first, then always the place farthest from those that have a number.
            var next = taken.Count == 0 ? room.MaxBy(c => value(c.Cell)) : room.MaxBy(c => taken.Min(t => t.DistanceTo(c.Cell.At)));
            room.Remove(next);
            if (!_taken.IsFree(next.Box.Grown(1.5)))
                continue;
            taken.Add(next.Cell.At);
            _taken.Add(next.Box);
            numbers.Add(new PathElement(PathSteps.Rectangle(next.Box.Grown(0.5)), null, new Fill(1)));
            numbers.Add(new TextElement(ToneScale.Percent(value(next.Cell)), new(next.Box.Left, next.Box.Lower), NumberMm));
        }

        return numbers;
    }

    private Box NumberBox(StretchCell cell, double value) =>
        Box.About(_placing.On(cell.At), TextMeasure.AdvanceMm(ToneScale.Percent(value), NumberMm), NumberMm * TextMeasure.FigureHeight());
}
