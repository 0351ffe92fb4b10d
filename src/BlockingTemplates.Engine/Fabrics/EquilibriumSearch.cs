using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>One search, with its places, pin forces and bookkeeping.</summary>
internal sealed class EquilibriumSearch
{
    private const double SpringStiffness = 1e3;
    private const double Decrease = 1e-4;
    private const double Flatter = 0.5;
    private const int MostTrials = 20;
    private const double LeastForce = 1e-3;
    private const double Rounding = 1e-13;

    private readonly MembraneSystem _of;
    private readonly EquilibriumSettings _settings;
    private readonly IProgress<EquilibriumStep>? _progress;
    private readonly CancellationToken _cancellation;
    private readonly List<(int Node, double Part)>[] _stitches;
    private readonly WireBending _wires;
    private readonly MembraneSupport _support;
    private readonly bool[] _fixed;
    private readonly double[] _loads;
    private readonly Affine _shape;
    private readonly double[] _gradient;
    private readonly double[] _trial;
    private readonly Vector[] _pull;
    private double[] _x = [];

    internal EquilibriumSearch(MembraneSystem of, MembraneSupport support, EquilibriumSettings settings, IProgress<EquilibriumStep>? progress, CancellationToken cancellation)
    {
        (_of, _support, _settings, _progress, _cancellation) = (of, support, settings, progress, cancellation);
        var n = of.Mesh.Nodes.Count;
        _stitches = [.. support.Pins.Select(p => RimStitches.Parts(of.Mesh, p.Edge, p.Fraction, p.WidthMm))];
        _wires = new(of.Mesh, support.Wires, of.Energy.Unit);
        _pull = new Vector[_stitches.Length];
        _fixed = new bool[2 * n];
        _loads = new double[2 * n];
        _gradient = new double[2 * n];
        _trial = new double[2 * n];
        foreach (var node in support.Fixed)
            (_fixed[2 * node.Node], _fixed[(2 * node.Node) + 1]) = (_fixed[2 * node.Node] || node.X is not null, _fixed[(2 * node.Node) + 1] || node.Y is not null);
        foreach (var load in support.Loads)
        {
            _loads[2 * load.Node] += load.Force.X / of.Energy.Unit;
            _loads[(2 * load.Node) + 1] += load.Force.Y / of.Energy.Unit;
        }

        var rest = Flat(of.Mesh.Nodes);
        List<(Point, Point)> pairs = [.. support.Pins.Select((p, i) => (Point.Origin + Mean(rest, _stitches[i]), p.Mark))];
        pairs.AddRange(support.Fixed.Where(f => f is { X: not null, Y: not null }).Select(f => (of.Mesh.Nodes[f.Node], new Point(f.X!.Value, f.Y!.Value))));
        _shape = EvenShape.Fit(pairs);
    }

    internal EquilibriumEnd End { get; private set; }

    internal double Residual { get; private set; }

    internal double PinError { get; private set; }

    internal int Steps { get; private set; }

    internal void Run(IReadOnlyList<Point>? start)
    {
        _x = Flat(start ?? [.. _of.Mesh.Nodes.Select(_shape.Map)]);
        foreach (var node in _support.Fixed)
        {
            _x[2 * node.Node] = node.X ?? _x[2 * node.Node];
            _x[(2 * node.Node) + 1] = node.Y ?? _x[(2 * node.Node) + 1];
        }

        var stay = new SlackStay(_settings.SlackShare, _shape);
        for (Steps = 0; ; Steps++)
        {
            _cancellation.ThrowIfCancellationRequested();
            var energy = Balance(stay);
            _progress?.Report(new(Steps, Residual));
            if (Residual <= _settings.Tolerance && PinError <= _settings.Tolerance * _of.SizeMm)
                End = EquilibriumEnd.Converged;
            else if (Steps >= _settings.MostSteps)
                End = EquilibriumEnd.StepLimit;
            else if (_settings.TimeIsUp.IsCancellationRequested)
                End = EquilibriumEnd.TimeLimit;
            else if (Step(energy, stay))
                continue;
            else
                End = EquilibriumEnd.NoWayDown;
            return;
        }
    }

    /// <summary>
    /// Where the nodes would lie, to first order, if slack cloth were kept near an even shape larger by a share; null where
    /// the tangent at the rest has no factor.
    /// </summary>
    internal Point[]? PlacesWithLargerStay(double by)
    {
        if (!_of.Factor.Factor(_of.Tangent))
            return null;
        var larger = Affine.Stretch(Point.Origin, 0, 1 + by, 1 + by).Then(_shape);
        _of.Energy.Gradient(_x, new(_settings.SlackShare, _shape), _gradient);
        _of.Energy.Gradient(_x, new(_settings.SlackShare, larger), _trial);
        for (var u = 0; u < _x.Length; u++)
            _trial[u] = _fixed[u] ? 0 : _gradient[u] - _trial[u];
        var move = _of.Factor.Solve(_trial);
        return [.. Enumerable.Range(0, _x.Length / 2).Select(i => new Point(_x[2 * i] + move[2 * i], _x[(2 * i) + 1] + move[(2 * i) + 1]))];
    }

    internal Point[] Places() => [.. Enumerable.Range(0, _x.Length / 2).Select(i => new Point(_x[2 * i], _x[(2 * i) + 1]))];

    /// <summary>Forces of the pins on the cloth.</summary>
    internal Vector[] PinLoads() => [.. _pull.Select((p, i) => -_of.Energy.Unit * (p + (SpringStiffness * Gap(_x, i))))];

    /// <summary>Gradient and tangent of cloth, pins and loads; residuals; gives the energy.</summary>
    private double Balance(SlackStay stay)
    {
        var (energy, forces) = _of.Energy.Derivatives(_x, stay, _gradient, _of.Tangent);
        var (bending, squared) = _wires.AddTo(_x, _gradient, _of.Tangent);
        energy += bending;
        var scale = (forces * forces) + squared;
        PinError = 0;
        for (var i = 0; i < _stitches.Length; i++)
        {
            var gap = Gap(_x, i);
            PinError = Math.Max(PinError, gap.Length);
            var pull = _pull[i] + (SpringStiffness * gap);
            scale += pull.Dot(pull);
            energy += _pull[i].Dot(gap) + (SpringStiffness / 2 * gap.Dot(gap));
            foreach (var (node, part) in _stitches[i])
            {
                _gradient[2 * node] += part * pull.X;
                _gradient[(2 * node) + 1] += part * pull.Y;
                foreach (var (other, otherPart) in _stitches[i])
                {
                    var spring = SpringStiffness * part * otherPart;
                    if (other <= node)
                        _of.Tangent.Add(node, other, spring, 0, 0, spring);
                }
            }
        }

        var open = 0.0;
        for (var u = 0; u < _x.Length; u++)
        {
            energy -= _loads[u] * _x[u];
            scale += _loads[u] * _loads[u];
            _gradient[u] = _fixed[u] ? 0 : _gradient[u] - _loads[u];
            open += _gradient[u] * _gradient[u];
        }

        if (_support.Fixed.Count > 0)
            _of.Tangent.Fix(_fixed);
        Residual = Math.Sqrt(open / Math.Max(scale, LeastForce * LeastForce * _of.SizeMm * _of.SizeMm));
        return energy;
    }

    /// <summary>One Newton step; false where no way down is found.</summary>
    private bool Step(double energy, SlackStay stay)
    {
        if (!_of.Factor.Factor(_of.Tangent))
            return false;
        var down = _of.Factor.Solve(_gradient);
        var slope = 0.0;
        for (var u = 0; u < down.Length; u++)
            slope -= down[u] * _gradient[u];
        var next = new double[_x.Length];
        var (low, high, lowSlope) = (0.0, double.PositiveInfinity, slope);
        for (var (part, trials) = (1.0, 0); trials < MostTrials; trials++)
        {
            for (var u = 0; u < next.Length; u++)
                next[u] = _x[u] - (part * down[u]);
            var total = Total(next, down, stay, out var size, out var slopeThere);
            var falls = total <= energy + (Decrease * part * slope) + (Rounding * size);
            var past = !falls || slopeThere > -Flatter * slope;
            if (!past && (slopeThere >= Flatter * slope || high > 1))
                return Take(next, part);
            if (past)
                high = part;
            else
                (low, lowSlope) = (part, slopeThere);
            var share = falls && past ? lowSlope / (lowSlope - slopeThere) : 0.5;
            part = low + (Math.Clamp(share, 0.1, 0.9) * (high - low));
        }

        if (low == 0)
            return false;
        for (var u = 0; u < next.Length; u++)
            next[u] = _x[u] - (low * down[u]);
        return Take(next, low);
    }

    private bool Take(double[] next, double part)
    {
        _x = next;
        for (var i = 0; i < _pull.Length && part == 1; i++)
            _pull[i] += SpringStiffness * Gap(_x, i);
        return true;
    }

    /// <summary>Energy at places, its slope along the step, and the size of its terms.</summary>
    private double Total(double[] x, double[] down, SlackStay stay, out double size, out double slope)
    {
        var energy = _of.Energy.Gradient(x, stay, _trial);
        energy += _wires.AddTo(x, _trial, null).Energy;
        size = Math.Abs(energy);
        for (var i = 0; i < _stitches.Length; i++)
        {
            var gap = Gap(x, i);
            energy += _pull[i].Dot(gap) + (SpringStiffness / 2 * gap.Dot(gap));
            size += _pull[i].Length * _of.SizeMm;
            var pull = _pull[i] + (SpringStiffness * gap);
            foreach (var (node, part) in _stitches[i])
            {
                _trial[2 * node] += part * pull.X;
                _trial[(2 * node) + 1] += part * pull.Y;
            }
        }

        slope = 0;
        for (var u = 0; u < x.Length; u++)
        {
            energy -= _loads[u] * x[u];
            size += Math.Abs(_loads[u] * x[u]);
            slope -= down[u] * (_fixed[u] ? 0 : _trial[u] - _loads[u]);
        }

        return energy;
    }

    private Vector Gap(double[] x, int pin) => Mean(x, _stitches[pin]) - (_support.Pins[pin].Mark - Point.Origin);

    private static Vector Mean(double[] x, List<(int Node, double Part)> stitch)
    {
        var sum = default(Vector);
        foreach (var (node, part) in stitch)
            sum += part * new Vector(x[2 * node], x[(2 * node) + 1]);
        return sum;
    }

    private static double[] Flat(IReadOnlyList<Point> points)
    {
        var x = new double[2 * points.Count];
        for (var i = 0; i < points.Count; i++)
            (x[2 * i], x[(2 * i) + 1]) = (points[i].X, points[i].Y);
        return x;
    }
}
