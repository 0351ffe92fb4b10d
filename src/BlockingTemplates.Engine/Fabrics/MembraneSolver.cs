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
    private readonly TriangleMesh _mesh;
    private const double OtherStay = 0.03;

    private readonly MembraneSystem _system;
    private readonly double _widestMm;

    /// <summary>Analyses a mesh and a cloth.</summary>
    /// <param name="mesh">The unblocked cloth.</param>
    /// <param name="cloth">Its stiffness.</param>
    /// <param name="widestStitchMm">Width of the widest stitch to be held, in millimetres; 0 where no pins will be.</param>
    /// <param name="carriesCompression">True for an elastic sheet without wrinkles.</param>
    /// <param name="threads">How many parts of the piece are reckoned side by side, 1 or more; the answer is the same.</param>
    public MembraneSolver(TriangleMesh mesh, OrthotropicCloth cloth, double widestStitchMm, bool carriesCompression = false, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfNegative(widestStitchMm);
        (_mesh, _widestMm) = (mesh, widestStitchMm);
        var groups = widestStitchMm > 0 ? RimStitches.Groups(mesh, widestStitchMm) : [];
        var energy = new MembraneEnergy(mesh, cloth, carriesCompression, groups);
        var box = Box.Around(mesh.Nodes);
        _system = new(mesh, energy, new(energy.Pattern), new(energy.Pattern, mesh.Nodes, threads), Math.Max(box.Width, box.Height));
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
        var search = new EquilibriumSearch(_system, support, settings, progress, cancellation);
        search.Run(start);
        var places = search.Places();
        var stretches = _system.Energy.Stretches(places);
        var loads = search.PinLoads();
        var taut = stretches.All(s => s.State == ClothState.Taut);
        var other = settings.TrySlack && !taut && search.End == EquilibriumEnd.Converged ? search.PlacesWithLargerStay(OtherStay) : null;
        return new(search.End, search.Residual, search.PinError, search.Steps, _mesh.SmallestAngleDegrees, places, stretches, loads, other, taut || other is not null);
    }

    /// <summary>Leaves its memory to the next solver, where no more is asked of this one; optional, and worth it: fresh memory costs more time than a factor.</summary>
    public void LeaveMemory() => _system.Factor.Dispose();
}
