using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Combs and wires at full size: a comb as its bar at true length with a tick for each prong, a wire as a grey line just inside its edge.</summary>
internal sealed class HeldEdgesPicture
{
    private const double InsideMm = 2.5;
    private const double ProngMm = 2.2;
    private const double StepMm = 4;
    private readonly List<SeenLine> _lines = [];

    public HeldEdgesPicture(PinPlan plan, IReadOnlyList<Mark> marks, HalfGuide? half)
    {
        foreach (var bar in marks.Select(m => m.Bar).Where(b => b is not null))
        {
            var across = (bar!.To - bar.From).Unit.TurnedLeft;
            _lines.Add(new([bar.From, bar.To], false, GuideInk.CombBar));
            _lines.AddRange(bar.ProngsAt.Select(p => new SeenLine([p - (ProngMm * across), p + (ProngMm * across)], false, GuideInk.Prong)));
        }

        foreach (var wire in plan.Wires)
            _lines.AddRange(Parts(Line(plan, wire), half).Where(p => p.Count > 1).Select(p => new SeenLine(p, false, GuideInk.Wire)));
    }

    /// <summary>What a sheet shows.</summary>
    public IEnumerable<Element> In(Box box) => _lines.SelectMany(l => l.In(box));

    /// <summary>The line of a wire, inside its edge, standing out beyond it where it leaves the edge at a corner.</summary>
    private static List<Point> Line(PinPlan plan, Wire wire)
    {
        var curve = plan.Pinned.Edges[wire.Edge].Curve;
        var length = plan.Edges[wire.Edge].PinnedMm;
        var steps = Math.Max(1, (int)Math.Ceiling((wire.ToMm - wire.FromMm) / StepMm));
        List<Point> line = [.. Enumerable.Range(0, steps + 1).Select(k => At((wire.FromMm + ((wire.ToMm - wire.FromMm) * k / steps)) / length))];
        var beyond = WireSettings.StandsOut.Millimetres;
        if (wire.FromMm == 0)
            line.Insert(0, line[0] - (beyond * curve.Direction(0)));
        if (wire.ToMm >= length - 1e-6)
            line.Add(line[^1] + (beyond * curve.Direction(1)));
        return line;

        Point At(double fraction) => curve.At(Math.Clamp(fraction, 0, 1)) + (InsideMm * curve.Direction(Math.Clamp(fraction, 0, 1)).TurnedLeft);
    }

    /// <summary>The stretches of a line that half a guide prints.</summary>
    private static List<List<Point>> Parts(List<Point> line, HalfGuide? half)
    {
        if (half is null)
            return [line];
        List<List<Point>> parts = [[]];
        foreach (var point in line)
        {
            if (half.Keeps(point))
                parts[^1].Add(point);
            else if (parts[^1].Count > 0)
                parts.Add([]);
        }

        return parts;
    }
}
