using System.Collections.Concurrent;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Finds the fewest mats over all shifts and allowed turns.</summary>
internal static class MatSearch
{
    /// <summary>What counts as contact only, in millimetres.</summary>
    public const double ContactMm = 0.01;

    /// <summary>The mats of the best way to lay the lattice, or null where no field fits the floor.</summary>
    /// <remarks>
    /// With no shift a corner of the lattice stands at the lower left of the box of outline and border, so that an exact fit
    /// is always tried. A turn is left out only where a lower bound shows that each of its shifts takes more mats than a way
    /// already found, or where nothing can be preferred to that way; so the answer does not depend on the order of the work.
    /// </remarks>
    /// <param name="ring">The pinned outline.</param>
    /// <param name="marks">The marks.</param>
    /// <param name="settings">The mats.</param>
    /// <param name="floor">What the field has to fit on, or null for anything.</param>
    public static (LaidMats Mats, MatTurn Turn)? Fewest(IReadOnlyList<Point> ring, IReadOnlyList<Point> marks, MatSettings settings, MatFloor? floor)
    {
        var turns = MatTurn.Of(settings);
        var lattices = new (TurnedLattice Lattice, int Bound)[turns.Count];
        Parallel.For(0, turns.Count, i =>
        {
            var lattice = new TurnedLattice(turns[i], ring, marks, settings, floor);
            lattices[i] = (lattice, lattice.FewestMats());
        });

        MatPlacing? best = null;
        var offering = new Lock();
        var promisingFirst = Partitioner.Create(lattices.OrderBy(l => l.Bound).ThenBy(l => l.Lattice.Turn.Degrees), EnumerablePartitionerOptions.NoBuffering);
        Parallel.ForEach(promisingFirst, l =>
        {
            var known = Volatile.Read(ref best);
            if (l.Bound == int.MaxValue
                || l.Bound > known?.Mats
                || (known is not null && known.IsUnbeatable(l.Bound) && known.TurnDegrees < l.Lattice.Turn.Degrees))
            {
                return;
            }

            var placing = l.Lattice.Best(known);
            lock (offering)
            {
                if (placing is not null && placing.IsBetterThan(best))
                    best = placing;
            }
        });

        if (best is null)
            return null;
        var found = lattices.First(l => l.Lattice.Turn.Degrees == best.TurnDegrees).Lattice;
        return (found.Laid(best), found.Turn);
    }
}
