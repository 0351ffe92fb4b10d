using System.Diagnostics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Finds where a pinned cloth comes to rest; analysed once, then solved for any pins on its edge.</summary>
/// <remarks>
/// Newton's method on the convex energy; a step keeps Armijo's rule and may not run past the valley: its slope there is at
/// most half the slope at its start (J. Nocedal and S. J. Wright, Numerical Optimization, 2nd ed. 2006, ch. 3). Pins are held exactly by multipliers with a stiff spring beside them (augmented Lagrangian, ch. 17), so
/// that pins come and go without a new analysis. Not for use by several threads at once.
/// </remarks>
public sealed class MembraneSolver
{
    private const double SpringStiffness = 1e3;
    private const double Decrease = 1e-4;
    private const double Flatter = 0.5;
    private const int MostTrials = 40;
    private const double Rounding = 1e-13;

    private readonly TriangleMesh _mesh;
    private readonly MembraneEnergy _energy;
    private readonly StiffnessMatrix _tangent;
    private readonly FrontalCholesky _factor;
    private readonly double _widestMm;
    private readonly double _size;

    /// <summary>Analyses a mesh and a cloth.</summary>
    /// <param name="mesh">The unblocked cloth.</param>
    /// <param name="cloth">Its stiffness.</param>
    /// <param name="widestStitchMm">Width of the widest stitch to be held, in millimetres; 0 where no pins will be.</param>
    /// <param name="carriesCompression">True for an elastic sheet without wrinkles.</param>
    /// <param name="threads">1 or 2.</param>
    public MembraneSolver(TriangleMesh mesh, OrthotropicCloth cloth, double widestStitchMm, bool carriesCompression = false, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfNegative(widestStitchMm);
        (_mesh, _widestMm) = (mesh, widestStitchMm);
        var groups = widestStitchMm > 0 ? RimStitches.Groups(mesh, widestStitchMm) : [];
        _energy = new(mesh, cloth, carriesCompression, groups);
        _tangent = new(_energy.Pattern);
        _factor = new(_energy.Pattern, mesh.Nodes, threads);
        var box = Box.Around(mesh.Nodes);
        _size = Math.Max(box.Width, box.Height);
    }

    /// <summary>The equilibrium of a support.</summary>
    /// <param name="support">Pins, fixed nodes, loads.</param>
    /// <param name="settings">Tolerance and limits; the usual ones where null.</param>
    /// <param name="start">Node places to start from, or null for an even pull.</param>
    /// <param name="progress">Told of every step.</param>
    /// <param name="cancellation">Ends the search with an <see cref="OperationCanceledException"/>.</param>
    public Equilibrium Solve(
        MembraneSupport support,
        EquilibriumSettings? settings = null,
        IReadOnlyList<Point>? start = null,
        IProgress<EquilibriumStep>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(support);
        settings ??= new();
        if (start is not null && start.Count != _mesh.Nodes.Count)
            throw new ArgumentException("The start needs a place for each node.", nameof(start));
        if (support.Pins.Any(p => !(p.WidthMm > 0 && p.WidthMm <= _widestMm * (1 + 1e-9))))
            throw new ArgumentException("A pin's stitch is wider than the widest announced.", nameof(support));
        var clock = Stopwatch.StartNew();
        var search = new Search(this, support, settings, clock, progress, cancellation);
        search.Run(start, settings.SlackShare);
        var places = search.Places();
        var stretches = _energy.Stretches(places);
        var loads = search.PinLoads();
        var first = (search.End, search.Residual, search.PinError, search.Steps);
        var taut = stretches.All(s => s.State == ClothState.Taut);
        IReadOnlyList<Point>? softer = null;
        if (settings.TrySlack && !taut && first.End == EquilibriumEnd.Converged)
        {
            search.Run(places, settings.SlackShare / 10);
            softer = search.End == EquilibriumEnd.Converged ? search.Places() : null;
        }

        return new(first.End, first.Residual, first.PinError, first.Steps, _mesh.SmallestAngleDegrees, places, stretches, loads, softer, taut || softer is not null);
    }

    /// <summary>One search, with its places, pin forces and bookkeeping.</summary>
    private sealed class Search
    {
        private readonly MembraneSolver _of;
        private readonly EquilibriumSettings _settings;
        private readonly Stopwatch _clock;
        private readonly IProgress<EquilibriumStep>? _progress;
        private readonly CancellationToken _cancellation;
        private readonly List<(int Node, double Part)>[] _stitches;
        private readonly MembraneSupport _support;
        private readonly bool[] _fixed;
        private readonly double[] _loads;
        private readonly Affine _shape;
        private readonly double[] _gradient;
        private readonly double[] _trial;
        private readonly Vector[] _pull;
        private double[] _x = [];

        internal Search(MembraneSolver of, MembraneSupport support, EquilibriumSettings settings, Stopwatch clock, IProgress<EquilibriumStep>? progress, CancellationToken cancellation)
        {
            (_of, _support, _settings, _clock, _progress, _cancellation) = (of, support, settings, clock, progress, cancellation);
            var n = of._mesh.Nodes.Count;
            _stitches = [.. support.Pins.Select(p => RimStitches.Parts(of._mesh, p.Edge, p.Fraction, p.WidthMm))];
            _pull = new Vector[_stitches.Length];
            _fixed = new bool[2 * n];
            _loads = new double[2 * n];
            _gradient = new double[2 * n];
            _trial = new double[2 * n];
            foreach (var node in support.Fixed)
                (_fixed[2 * node.Node], _fixed[(2 * node.Node) + 1]) = (_fixed[2 * node.Node] || node.X is not null, _fixed[(2 * node.Node) + 1] || node.Y is not null);
            foreach (var load in support.Loads)
            {
                _loads[2 * load.Node] += load.Force.X / of._energy.Unit;
                _loads[(2 * load.Node) + 1] += load.Force.Y / of._energy.Unit;
            }

            var rest = Flat(of._mesh.Nodes);
            List<(Point, Point)> pairs = [.. support.Pins.Select((p, i) => (Point.Origin + Mean(rest, _stitches[i]), p.Mark))];
            pairs.AddRange(support.Fixed.Where(f => f is { X: not null, Y: not null }).Select(f => (of._mesh.Nodes[f.Node], new Point(f.X!.Value, f.Y!.Value))));
            _shape = EvenShape.Fit(pairs);
        }

        internal EquilibriumEnd End { get; private set; }

        internal double Residual { get; private set; }

        internal double PinError { get; private set; }

        internal int Steps { get; private set; }

        internal void Run(IReadOnlyList<Point>? start, double share)
        {
            _x = Flat(start ?? [.. _of._mesh.Nodes.Select(_shape.Map)]);
            foreach (var node in _support.Fixed)
            {
                _x[2 * node.Node] = node.X ?? _x[2 * node.Node];
                _x[(2 * node.Node) + 1] = node.Y ?? _x[(2 * node.Node) + 1];
            }

            var stay = new SlackStay(share, _shape);
            for (Steps = 0; ; Steps++)
            {
                _cancellation.ThrowIfCancellationRequested();
                var energy = Balance(stay);
                _progress?.Report(new(Steps, Residual));
                if (Residual <= _settings.Tolerance && PinError <= _settings.Tolerance * _of._size)
                    End = EquilibriumEnd.Converged;
                else if (Steps >= _settings.MostSteps)
                    End = EquilibriumEnd.StepLimit;
                else if (_clock.Elapsed > _settings.TimeLimit)
                    End = EquilibriumEnd.TimeLimit;
                else if (Step(energy, stay))
                    continue;
                else
                    End = EquilibriumEnd.NoWayDown;
                return;
            }
        }

        internal Point[] Places() => [.. Enumerable.Range(0, _x.Length / 2).Select(i => new Point(_x[2 * i], _x[(2 * i) + 1]))];

        /// <summary>Forces of the pins on the cloth.</summary>
        internal Vector[] PinLoads() => [.. _pull.Select((p, i) => -_of._energy.Unit * (p + (SpringStiffness * Gap(_x, i))))];

        /// <summary>Gradient and tangent of cloth, pins and loads; residuals; gives the energy.</summary>
        private double Balance(SlackStay stay)
        {
            var (energy, forces) = _of._energy.Derivatives(_x, stay, _gradient, _of._tangent);
            var scale = forces * forces;
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
                            _of._tangent.Add(node, other, spring, 0, 0, spring);
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
                _of._tangent.Fix(_fixed);
            Residual = Math.Sqrt(open / Math.Max(scale, 1e-24 * _of._size * _of._size));
            return energy;
        }

        /// <summary>One Newton step; false where no way down is found.</summary>
        private bool Step(double energy, SlackStay stay)
        {
            if (!_of._factor.Factor(_of._tangent))
                return false;
            var down = _of._factor.Solve(_gradient);
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
            var energy = _of._energy.Gradient(x, stay, _trial);
            size = Math.Abs(energy);
            for (var i = 0; i < _stitches.Length; i++)
            {
                var gap = Gap(x, i);
                energy += _pull[i].Dot(gap) + (SpringStiffness / 2 * gap.Dot(gap));
                size += _pull[i].Length * _of._size;
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
}
