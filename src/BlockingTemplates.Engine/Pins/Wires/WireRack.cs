using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>The wires still at hand while they are dealt out to edges.</summary>
/// <remarks>Fewest wires first, then the shorter ones; what is missing is bought, as long as the longest owned.</remarks>
public sealed class WireRack
{
    private const double Contact = 1e-6;
    private readonly List<WireStock> _left;
    private readonly Length _bought;

    /// <summary>A rack of what is owned.</summary>
    public WireRack(WireSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        _left = [.. settings.Owned ?? []];
        _bought = _left.Count > 0 ? _left.Max(w => w.Length) : WireSettings.UsualLength;
    }

    /// <summary>Takes wires of one form that together, each lying so far beside the next, are at least so long.</summary>
    /// <param name="form">What they are.</param>
    /// <param name="needMm">Length to cover, above 0.</param>
    /// <param name="overlapMm">How far one lies beside the next.</param>
    /// <param name="times">How many edges alike are to get the same wires, 1 or 2.</param>
    /// <returns>Lengths for one of the edges, the longest first, and how many of them have to be bought for each edge.</returns>
    public IReadOnlyList<(double LengthMm, bool Owned)> Take(WireForm form, double needMm, double overlapMm, int times = 1)
    {
        overlapMm = Beside(overlapMm, BoughtOf(form));
        List<double> owned = [.. _left.Where(w => w.Form == form).SelectMany(w => Enumerable.Repeat(w.Length.Millimetres, w.Count / times)).OrderDescending()];
        List<double> taken = [];
        double Reach(int count, double sum) => sum - ((count - 1) * overlapMm);
        while ((taken.Count == 0 || Reach(taken.Count, taken.Sum()) < needMm - Contact) && taken.Count < owned.Count && owned[taken.Count] >= 2 * overlapMm)
            taken.Add(owned[taken.Count]);
        var missing = 0;
        var bought = BoughtOf(form);
        while (taken.Count + missing == 0 || Reach(taken.Count + missing, taken.Sum() + (missing * bought)) < needMm - Contact)
            missing++;
        // A bought wire may make a short one needless.
        while (missing > 0 && taken.Count > 0 && Reach(taken.Count - 1 + missing, taken.Sum() - taken[^1] + (missing * bought)) >= needMm - Contact)
            taken.RemoveAt(taken.Count - 1);
        if (missing == 0)
            Shorten(taken, owned, needMm + ((taken.Count - 1) * overlapMm), overlapMm);
        foreach (var length in taken)
            PutAway(form, length, times);
        return [.. taken.Select(l => (l, true)).Concat(Enumerable.Repeat((bought, false), missing)).OrderByDescending(w => w.Item1)];
    }

    /// <summary>How far wires lie beside each other: as wanted, but never more than half the shortest.</summary>
    public static double Beside(double wantedMm, double shortestMm) => Math.Min(wantedMm, shortestMm / 2);

    /// <summary>Changes wires for shorter ones as long as they still reach, the longest first.</summary>
    private static void Shorten(List<double> taken, List<double> owned, double needed, double overlapMm)
    {
        var spare = owned.Skip(taken.Count).ToList();
        for (var i = 0; i < taken.Count; i++)
        {
            var rest = taken.Sum() - taken[i];
            var shorter = spare.FindLastIndex(s => s < taken[i] && s >= 2 * overlapMm && rest + s >= needed - Contact);
            if (shorter < 0)
                continue;
            (taken[i], spare[shorter]) = (spare[shorter], taken[i]);
            spare.Sort((a, b) => b.CompareTo(a));
        }
    }

    private double BoughtOf(WireForm form) => (_left.Where(w => w.Form == form).Select(w => (Length?)w.Length).Max() ?? _bought).Millimetres;

    private void PutAway(WireForm form, double lengthMm, int times)
    {
        for (var i = 0; i < _left.Count; i++)
        {
            if (_left[i].Form != form || _left[i].Length.Millimetres != lengthMm || _left[i].Count < times)
                continue;
            _left[i] = _left[i] with { Count = _left[i].Count - times };
            return;
        }

        throw new InvalidOperationException("A wire was taken that is not there.");
    }
}
