using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Overviews;

/// <summary>Small pictures of the piece on its mats: parts that overview, mat map and taping map share.</summary>
internal sealed class FieldPicture
{
    private const double FlatMm = 0.5;
    private readonly Plan _plan;
    private readonly FramePlacing _placing;
    private readonly TakenPlaces _taken = new();
    private readonly TakenPlaces _lines = new();

    public FieldPicture(Plan plan, FramePlacing placing)
    {
        (_plan, _placing) = (plan, placing);
        foreach (var line in new[] { plan.Pins.Pinned, plan.Pins.LayLine }.OfType<Outline>())
        {
            var ring = line.Ring(FlatMm).Select(placing.On).ToList();
            for (var i = 0; i < ring.Count; i++)
                _lines.AddLeader(ring[i], ring[(i + 1) % ring.Count]);
        }
    }

    public static Box Field(Plan plan) => new(0, 0, plan.Mats.Columns * plan.Mats.PitchX, plan.Mats.Rows * plan.Mats.PitchY);

    /// <summary>What is drawn: the field with all that lies beyond it (a lay line may).</summary>
    public static Box Extent(Plan plan)
    {
        var field = Field(plan);
        var ring = plan.Pins.LayLine is { } lay ? plan.Pins.Pinned.Ring(FlatMm).Concat(lay.Ring(FlatMm)) : plan.Pins.Pinned.Ring(FlatMm);
        return Box.Around([new(field.Left, field.Lower), new(field.Right, field.Upper), .. ring]);
    }

    /// <summary>Keeps later labels off a box of the page.</summary>
    public void Keep(Box box) => _taken.Add(box);

    /// <summary>The mats as plain rectangles, named or not.</summary>
    public IEnumerable<Element> Mats(bool named)
    {
        foreach (var mat in _plan.Mats.Mats)
            yield return new PathElement(PathSteps.Rectangle(On(mat)), new(0.25, 0.55), new Fill(0.95));
        foreach (var name in named ? MatNames() : [])
            yield return name;
    }

    /// <summary>The names of the mats.</summary>
    public IEnumerable<Element> MatNames()
    {
        var size = Math.Min(5, Math.Max(2.6, 60 * _placing.Scale));
        foreach (var mat in _plan.Mats.Mats)
        {
            var box = On(mat);
            // In the corner that neither line crosses, the lower left before the others.
            double width = TextMeasure.AdvanceMm(mat.Name, size), height = 0.75 * size;
            var lower = new Box(box.Left + 1, box.Lower + 1, box.Left + 1 + width, box.Lower + 1 + height);
            double across = box.Width - width - 2, up = box.Height - height - 2;
            Vector[] corners = [default, new(across, 0), new(0, up), new(across, up)];
            var place = corners.Select(lower.Moved).Where(b => _lines.IsFree(b.Grown(0.3))).Append(lower).First();
            _taken.Add(place);
            yield return new TextElement(mat.Name, new(place.Left, place.Lower), size, Grey: 0.4);
        }
    }

    private Box On(Mat mat) => _placing.On(new Box(mat.At.X, mat.At.Y, mat.At.X + _plan.Mats.PitchX, mat.At.Y + _plan.Mats.PitchY));

    public IEnumerable<Element> Outline(double widthMm = 0.5)
    {
        yield return new PathElement(PathSteps.Polyline(_plan.Pins.Pinned.Ring(FlatMm).Select(_placing.On), true), new(widthMm), null);
    }

    public IEnumerable<Element> LayLine()
    {
        if (_plan.Pins.LayLine is { } lay)
            yield return new PathElement(PathSteps.Polyline(lay.Ring(FlatMm).Select(_placing.On), true), new(0.3, 0.35, [2, 1.2]));
    }

    /// <summary>Pins as dots, combs as bars.</summary>
    public IEnumerable<Element> Marks(double radiusMm) => _plan.Pins.Marks
        .Select(m => m.Bar is { } bar
            ? new PathElement(PathSteps.Line(_placing.On(bar.From), _placing.On(bar.To)), new(1.6 * radiusMm))
            : new PathElement(PathSteps.Circle(_placing.On(m.At), m.IsAnchor ? 1.6 * radiusMm : radiusMm), null, new Fill()));

    /// <summary>Wires as a broad grey line under their edge.</summary>
    public IEnumerable<Element> Wires() => _plan.Pins.Wires.Select(w =>
    {
        var (curve, length) = (_plan.Pins.Pinned.Edges[w.Edge].Curve, _plan.Pins.Edges[w.Edge].PinnedMm);
        var steps = Math.Max(1, (int)Math.Ceiling((w.ToMm - w.FromMm) / 10));
        return new PathElement(PathSteps.Polyline(Enumerable.Range(0, steps + 1).Select(k => _placing.On(curve.At(Math.Clamp((w.FromMm + ((w.ToMm - w.FromMm) * k / steps)) / length, 0, 1)))), false), new(1.8, 0.65));
    });

    /// <summary>Numbers outside the outline, first rounds first; those without room are left out.</summary>
    public IEnumerable<Element> Numbers(double sizeMm, int mostRound = int.MaxValue)
    {
        foreach (var mark in _plan.Pins.Marks.Where(m => m.Round <= mostRound))
        {
            var text = mark.Number.ToString(CultureInfo.InvariantCulture);
            double width = TextMeasure.AdvanceMm(text, sizeMm, FontWeight.Bold), height = sizeMm * TextMeasure.FigureHeight(FontWeight.Bold);
            foreach (var far in new[] { 1.4, 3.0, 4.8 })
            {
                var n = mark.Outward;
                var off = far + (Math.Abs(n.X) * width / 2) + (Math.Abs(n.Y) * height / 2);
                var box = Box.About(_placing.On(mark.At) + (off * n), width, height);
                if (!_taken.IsFree(box.Grown(0.25)))
                    continue;
                _taken.Add(box);
                yield return new PathElement(PathSteps.Rectangle(box.Grown(0.2)), null, new Fill(0.97));
                yield return new TextElement(text, new(box.Left, box.Lower), sizeMm, FontWeight.Bold);
                break;
            }
        }
    }

    /// <summary>The finished length of every edge along its inside, where there is room for it.</summary>
    public IEnumerable<Element> EdgeLengths(double sizeMm)
    {
        for (var i = 0; i < _plan.Pins.Edges.Count; i++)
        {
            var edge = _plan.Pins.Edges[i];
            var curve = _plan.Pins.Pinned.Edges[i].Curve;
            var words = $"{edge.Name} edge {LengthWords.InBoth(edge.FinishedMm)}{edge.Treatment.AlongWords}";
            var half = TextMeasure.AdvanceMm(words, sizeMm) / 2;
            if (2 * half > 0.9 * _placing.Scale * curve.Length)
                continue;
            var along = curve.Direction(0.5);
            if (along.X < -1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y < 0))
                along = -along;
            var inward = -curve.Direction(0.5).TurnedRight;
            foreach (var far in new[] { 5.0, 8, 12, 17, 23, 30 })
            {
                var middle = _placing.On(curve.At(0.5)) + (far * inward);
                var boxes = Enumerable.Range(0, 12).Select(k => Box.About(middle + (((k / 5.5) - 1) * half * along), 0.9 * sizeMm, 0.9 * sizeMm)).ToList();
                if (!boxes.TrueForAll(b => _taken.IsFree(b) && _lines.IsFree(b)))
                    continue;
                boxes.ForEach(_taken.Add);
                var up = along.TurnedLeft;
                yield return new TextElement(words, middle - (0.35 * sizeMm * up), sizeMm, Align: TextAlign.Centre, AngleDegrees: Math.Atan2(along.Y, along.X) * 180 / Math.PI, Grey: 0.15);
                break;
            }
        }
    }
}
