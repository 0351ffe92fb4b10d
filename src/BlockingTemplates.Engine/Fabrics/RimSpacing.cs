using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Places the nodes along an outline: corners, kinks and stitches first, then graded between.</summary>
internal sealed class RimSpacing
{
    private const double KinkRadians = 0.35;
    private const double TurnPerNode = 0.35;
    private const double MergeFraction = 0.4;

    private readonly Outline _outline;
    private readonly MeshGrading _grading;
    private readonly double[] _edgeStart;
    private readonly double _length;
    private readonly List<(double Arc, double Spacing)> _fine = [];

    internal RimSpacing(Outline outline, MeshGrading grading)
    {
        (_outline, _grading) = (outline, grading);
        _edgeStart = new double[outline.Edges.Count + 1];
        for (var e = 0; e < outline.Edges.Count; e++)
            _edgeStart[e + 1] = _edgeStart[e] + outline.Edges[e].Curve.Length;
        _length = _edgeStart[^1];
    }

    /// <summary>Arc length of the whole outline.</summary>
    internal double Length => _length;

    /// <summary>Arc lengths at which edges begin.</summary>
    internal IReadOnlyList<double> EdgeStart => _edgeStart;

    /// <summary>Arc lengths of the nodes, ascending from 0.</summary>
    internal List<double> Arcs()
    {
        var anchors = Anchors();
        var arcs = new List<double>();
        for (var i = 0; i < anchors.Count; i++)
            Fill(anchors[i], i + 1 < anchors.Count ? anchors[i + 1] : _length, arcs);
        return arcs;
    }

    /// <summary>The rim node at an arc length.</summary>
    internal RimNode NodeAt(double arc)
    {
        var found = Array.BinarySearch(_edgeStart, arc);
        var edge = Math.Min(found >= 0 ? found : ~found - 1, _outline.Edges.Count - 1);
        var fraction = (arc - _edgeStart[edge]) / _outline.Edges[edge].Curve.Length;
        return new(edge, Math.Clamp(fraction, 0, Math.BitDecrement(1.0)), arc);
    }

    /// <summary>Where a rim node lies.</summary>
    internal Point PointAt(RimNode node) => _outline.Edges[node.Edge].Curve.At(node.Fraction);

    /// <summary>Corners, kinks and stitch nodes, ascending; a stitch node too near a corner or kink is left out.</summary>
    private List<double> Anchors()
    {
        var hard = new List<double>();
        for (var e = 0; e < _outline.Edges.Count; e++)
        {
            hard.Add(_edgeStart[e]);
            hard.AddRange(Kinks(_outline.Edges[e].Curve).Select(f => _edgeStart[e] + (f * _outline.Edges[e].Curve.Length)));
        }

        var soft = new List<(double Arc, double Step)>();
        foreach (var place in _grading.FinePlaces)
        {
            var middle = _edgeStart[place.Edge] + (place.Fraction * _outline.Edges[place.Edge].Curve.Length);
            var step = place.WidthMm / _grading.NodesPerStitch;
            for (var k = -_grading.NodesPerStitch / 2; k <= _grading.NodesPerStitch / 2; k++)
            {
                var arc = Wrapped(middle + (k * step));
                _fine.Add((arc, step));
                soft.Add((arc, step));
            }
        }

        _fine.Sort();
        soft.Sort();
        hard.Sort();
        var anchors = new List<double>(hard);
        var last = double.NegativeInfinity;
        foreach (var (arc, step) in soft)
        {
            if (arc - last < MergeFraction * step || NearestTo(hard, arc) < MergeFraction * step)
                continue;
            anchors.Add(arc);
            last = arc;
        }

        anchors.Sort();
        return anchors;
    }

    private double NearestTo(List<double> sorted, double arc)
    {
        var at = sorted.BinarySearch(arc);
        if (at >= 0)
            return 0;
        var above = ~at < sorted.Count ? sorted[~at] : sorted[0] + _length;
        var below = ~at > 0 ? sorted[~at - 1] : sorted[^1] - _length;
        return Math.Min(above - arc, arc - below);
    }

    private double Wrapped(double arc) => arc < 0 ? arc + _length : arc >= _length ? arc - _length : arc;

    /// <summary>Fractions at which a line turns sharply, as a polyline does.</summary>
    private static IEnumerable<double> Kinks(EdgeCurve curve)
    {
        var points = curve.Flatten(Outline.FlatteningMm);
        var total = points.Zip(points.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
        var run = 0.0;
        for (var i = 1; i + 1 < points.Count; i++)
        {
            run += points[i - 1].DistanceTo(points[i]);
            var (a, b) = (points[i] - points[i - 1], points[i + 1] - points[i]);
            if (Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))) > KinkRadians)
                yield return run / total;
        }
    }

    /// <summary>Nodes from one anchor up to, without, the next: equal shares of the integral of ds / spacing.</summary>
    private void Fill(double from, double to, List<double> arcs)
    {
        const int Samples = 64;
        var sum = new double[Samples + 1];
        var step = (to - from) / Samples;
        for (var k = 0; k < Samples; k++)
            sum[k + 1] = sum[k] + (step / SpacingAt(from + ((k + 0.5) * step), step));
        var count = Math.Max(1, (int)Math.Ceiling(sum[Samples] - 0.1));
        arcs.Add(from);
        var at = 0;
        for (var i = 1; i < count; i++)
        {
            var share = sum[Samples] * i / count;
            while (sum[at + 1] < share)
                at++;
            arcs.Add(from + ((at + ((share - sum[at]) / (sum[at + 1] - sum[at]))) * step));
        }
    }

    private double SpacingAt(double arc, double step)
    {
        var spacing = _grading.EdgeMm;
        var at = _fine.BinarySearch((arc, 0));
        at = at < 0 ? ~at : at;
        for (var k = -1; k <= 0 && _fine.Count > 0; k++)
        {
            var (place, fine) = _fine[(at + k + _fine.Count) % _fine.Count];
            var apart = Math.Abs(place - arc);
            spacing = Math.Min(spacing, fine + (_grading.Growth * Math.Max(0, Math.Min(apart, _length - apart) - fine)));
        }

        var node = NodeAt(arc);
        var curve = _outline.Edges[node.Edge].Curve;
        var half = Math.Min(0.5, step / curve.Length);
        var (low, high) = (Math.Max(0, node.Fraction - half), Math.Min(1, node.Fraction + half));
        var (a, b) = (curve.Direction(low), curve.Direction(high));
        var turn = Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
        var arcLength = (high - low) * curve.Length;
        return turn * spacing > TurnPerNode * arcLength ? Math.Max(TurnPerNode * arcLength / turn, spacing / 8) : spacing;
    }
}
