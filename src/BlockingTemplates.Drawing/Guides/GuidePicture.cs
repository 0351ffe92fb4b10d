using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The guide at full size, once for the whole piece, in the frame; sheets take their part of it.</summary>
public sealed class GuidePicture
{
    private const double LineToleranceMm = 0.25;
    private const double SpineBeyondMm = 25;
    private readonly Plan _plan;
    private readonly Guide _guide;
    private readonly int _lastRound;
    private readonly IReadOnlyList<Mark> _marks;
    private readonly GridPicture _grid;
    private readonly List<SeenLine> _outline = [];
    private readonly List<SeenLine> _seams;
    private readonly LayLinePicture? _layLine;
    private readonly MatNames _matNames;
    private readonly HeldEdgesPicture _held;

    /// <summary>The picture of a guide.</summary>
    public GuidePicture(Plan plan, Guide guide)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(guide);
        (_plan, _guide) = (plan, guide);
        _lastRound = plan.Pins.Marks.Max(m => m.Round);
        _marks = guide.Half?.Kept(plan.Pins) ?? plan.Pins.Marks;
        _outline.AddRange(Lines(plan.Pins.Pinned.Ring(), GuideInk.Outline));
        if (guide.CutLine is { } cut)
            _outline.AddRange(Lines(cut, GuideInk.CutLine));
        if (guide.Half is { } half)
            _outline.Add(Spine(half, plan.Pins.Pinned));
        _held = new(plan.Pins, _marks, guide.Half);
        _grid = new(plan.Project.Units);
        _seams = [.. MatSeams.Of(plan.Mats).Select(s => new SeenLine([s.From, s.To], false, GuideInk.Seam))];
        var taken = new TakenPlaces();
        foreach (var number in guide.Numbers)
            taken.Add(number.Spot.Box);
        foreach (var mark in plan.Pins.Marks)
            taken.Add(Box.About(mark.At, 10, 10));
        foreach (var cross in guide.Crosses)
            taken.Add(Box.About(cross, 2 * JointCrosses.HalfSizeMm, 2 * JointCrosses.HalfSizeMm));
        Take(taken, plan.Pins.Pinned.Ring(LineToleranceMm));
        if (guide.CutLine is { } cutAt)
            Take(taken, cutAt);
        if (plan.Pins.LayLine is { } lay)
            Take(taken, lay.Ring(LineToleranceMm));
        _layLine = plan.Pins.LayLine is { } line ? new(_marks, line, Lines(line.Ring(), GuideInk.LayLine), guide.Layout, taken) : null;
        foreach (var mark in plan.Pins.Marks)
            taken.AddLeader(mark.Rest ?? mark.At, mark.At);
        _matNames = new(plan.Mats, guide.Layout, taken);
    }

    /// <summary>What a sheet shows, in the frame, in drawing order.</summary>
    public IReadOnlyList<Element> On(Sheet sheet)
    {
        var box = _guide.Layout.PrintedBox(sheet);
        List<Element> content =
        [
            new LayerElement(GuideLayers.Grid, [.. _grid.In(box)]),
            new LayerElement(GuideLayers.Mats, [.. _seams.SelectMany(s => s.In(box)), .. _matNames.On(sheet)]),
        ];
        if (_layLine is not null)
        {
            content.Add(new LayerElement(GuideLayers.LayLine, _layLine.On(sheet, box)));
            content.Add(new LayerElement(GuideLayers.Arrows, [.. PullArrows.In(_marks, box)]));
        }

        content.Add(new LayerElement(GuideLayers.OutlineAndMarks, [.. _outline.SelectMany(l => l.In(box)), .. _held.In(box), .. Ticks(box), .. Marks(box)]));
        content.Add(new LayerElement(GuideLayers.Numbers, [.. Leaders(box), .. Numbers(sheet)]));
        content.AddRange(_guide.Crosses.Where(c => Reaches(c, box, JointCrosses.HalfSizeMm)).Select(c => new SymbolElement(JointCross.Symbol, c)));
        return [.. content.Where(e => e is not LayerElement { Content.Count: 0 })];
    }

    private static void Take(TakenPlaces taken, IReadOnlyList<Point> ring)
    {
        for (var i = 0; i < ring.Count; i++)
            taken.AddLeader(ring[i], ring[(i + 1) % ring.Count]);
    }

    private IEnumerable<SeenLine> Lines(IReadOnlyList<Point> ring, Stroke stroke) =>
        _guide.Half is { } half ? half.Kept(ring).Select(l => new SeenLine(l, false, stroke)) : [new SeenLine(ring, true, stroke)];

    private static SeenLine Spine(HalfGuide half, Outline pinned)
    {
        var along = pinned.Ring().Select(p => half.Spine.Dot(p - half.OnSpine)).ToList();
        return new([half.OnSpine + ((along.Min() - SpineBeyondMm) * half.Spine), half.OnSpine + ((along.Max() + SpineBeyondMm) * half.Spine)], false, GuideInk.Spine);
    }

    private IEnumerable<Element> Marks(Box box) => _marks
        .Select(m => (At: m.Bar is { } bar ? bar.From.Toward(bar.To, 0.5) : m.At, Symbol: MarkForms.Of(m, _lastRound)))
        .Where(m => m.Symbol is not null && Reaches(m.At, box, m.Symbol.HalfSizeMm))
        .Select(m => new SymbolElement(m.Symbol!, m.At));

    /// <summary>On a frame the ticks on its cut line, from which the pin goes in.</summary>
    private IEnumerable<Element> Ticks(Box box) => _guide.CutLine is null
        ? []
        : _marks.Select(m => (From: m.At + (GuidePlanner.CutLineMm * m.Outward), To: m.At + ((GuidePlanner.CutLineMm + 4) * m.Outward)))
            .Where(t => SegmentBox.Meets(t.From, t.To, box.Grown(1)))
            .Select(t => new PathElement(PathSteps.Line(t.From, t.To), GuideInk.Bar));

    private IEnumerable<Element> Leaders(Box box) => _guide.Numbers
        .Select(n => (From: _plan.Pins.Marks[n.Number - 1].At, To: n.LeaderTo))
        .Where(l => SegmentBox.Meets(l.From, l.To, box.Grown(1)) && l.From.DistanceTo(l.To) > 7)
        .Select(l => new PathElement(PathSteps.Line(l.From.Toward(l.To, 5.6 / l.From.DistanceTo(l.To)), l.To), GuideInk.Leader));

    private IEnumerable<Element> Numbers(Sheet sheet) => _guide.Numbers.Where(n => n.Sheet == sheet).SelectMany(NumberPicture.Of);

    private static bool Reaches(Point p, Box box, double halfSize) => box.Grown(halfSize).Holds(p);
}
