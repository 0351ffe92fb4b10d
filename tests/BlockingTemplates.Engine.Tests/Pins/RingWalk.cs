using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Engine.Tests.Pins;

/// <summary>The marks of a plan by their arc length round the pinned outline from corner 0.</summary>
internal sealed class RingWalk
{
    private readonly PinPlan _plan;
    private readonly List<double> _starts = [0];

    public RingWalk(PinPlan plan)
    {
        _plan = plan;
        foreach (var edge in plan.Pinned.Edges)
            _starts.Add(_starts[^1] + edge.Curve.Length);
        List<double> at = [.. plan.Marks.Select(Position).Order()];
        at.Add(at[0] + _starts[^1]);
        Gaps = [.. at.Zip(at.Skip(1))];
    }

    /// <summary>From each mark to the next one; the last one ends beyond the ring's length.</summary>
    public IReadOnlyList<(double From, double To)> Gaps { get; }

    public double Position(Mark mark) => _starts[mark.Edge] + (mark.Fraction * (_starts[mark.Edge + 1] - _starts[mark.Edge]));

    public (int Edge, double Fraction) Locate(double position)
    {
        var at = position % _starts[^1];
        var edge = Math.Min(_starts.FindLastIndex(s => s <= at), _plan.Edges.Count - 1);
        return (edge, (at - _starts[edge]) / (_starts[edge + 1] - _starts[edge]));
    }

    /// <summary>Whether a mark could stand inside a gap: a stitch of a counted edge, any place of another, a corner.</summary>
    public bool HasFreePlace(double from, double to)
    {
        for (var k = 1; k < 400; k++)
        {
            var (edge, fraction) = Locate(from + ((to - from) * k / 400));
            if (_plan.Edges[edge].Treatment is { Hold: Holding.None })
                continue;
            if (_plan.Edges[edge].Treatment.Count is not { } n)
                return true;
            // The stitches next to this place.
            foreach (var stitch in new[] { Math.Floor(fraction * n), Math.Ceiling(fraction * n) })
            {
                var at = _starts[edge] + (stitch / n * (_starts[edge + 1] - _starts[edge]));
                if (IsInside(at) || IsInside(at + _starts[^1]))
                    return true;
            }
        }

        return false;
        bool IsInside(double at) => at > from + 1e-4 && at < to - 1e-4;
    }
}
