namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>Marks that hold the wires of one edge: as few as keep every wire within the tolerance.</summary>
/// <remarks>
/// From the ends and the joints alone, the stretch with the deepest sag gets one mark more, again and again. The end spans of a
/// continuous beam sag more than inner ones of the same length, so they are made shorter: by (384 times 0.0065) to the power -1/4,
/// the ratio of the two sags in the tables of continuous beams. Places are arc lengths of the edge, in millimetres.
/// </remarks>
/// <param name="Sags">The wire on the pinned edge under each pull that it shall hold against.</param>
/// <param name="Stitches">Where a mark may stand.</param>
/// <param name="ToleranceMm">How far the wire may lie from the edge, above 0.</param>
/// <param name="PinSpacingMm">Where gaps as narrow as this do not do, single pins would do as well.</param>
public sealed record WireSpacing(IReadOnlyList<WireSag> Sags, RunStitches Stitches, double ToleranceMm, double PinSpacingMm)
{
    private const double Contact = 1e-6;
    private static readonly double EndSpan = Math.Pow(384 * 0.0065, -0.25);

    private double Length => Stitches.Run.Length;

    /// <summary>The marks, both ends included, or null where the wire sags too far even at the spacing of single pins.</summary>
    /// <param name="wires">Where each wire enters and leaves the edge; each such place is a mark.</param>
    /// <param name="forced">Other places that get a mark.</param>
    public IReadOnlyList<double>? Marks(IReadOnlyList<(double From, double To)> wires, IEnumerable<double> forced)
    {
        ArgumentNullException.ThrowIfNull(wires);
        var limits = Limits([0, Length, .. wires.SelectMany(w => (double[])[w.From, w.To]), .. forced]);
        var counts = Enumerable.Repeat(1, limits.Count - 1).ToArray();
        while (true)
        {
            var marks = Built(limits, counts);
            var worst = Worst(marks, wires);
            var deepest = Enumerable.Range(0, worst.Length).OrderByDescending(g => Math.Round(worst[g], 9)).First();
            if (worst[deepest] <= ToleranceMm + Contact)
                return marks;
            var stretch = limits.FindLastIndex(l => l <= marks[deepest] + Contact);
            if ((limits[stretch + 1] - limits[stretch]) / counts[stretch] <= PinSpacingMm)
                return null;
            More(counts, stretch, limits);
        }
    }

    /// <summary>Greatest sag of the wires in each gap between marks, either side, in millimetres.</summary>
    public double[] Worst(IReadOnlyList<double> marks, IReadOnlyList<(double From, double To)> wires)
    {
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(wires);
        var worst = new double[marks.Count - 1];
        foreach (var (from, to) in wires)
        {
            var first = Enumerable.Range(0, marks.Count).First(i => marks[i] >= from - Contact);
            double[] on = [.. marks.Where(m => m >= from - Contact && m <= to + Contact)];
            if (on.Length < 2)
                continue;
            foreach (var sags in Sags.Select(s => s.Worst(on)))
            {
                for (var i = 0; i < sags.Count; i++)
                    worst[first + i] = Math.Max(worst[first + i], Math.Abs(sags[i]));
            }
        }

        return worst;
    }

    private static List<double> Limits(IEnumerable<double> wanted)
    {
        List<double> limits = [];
        foreach (var at in wanted.Order())
        {
            if (limits.Count == 0 || at > limits[^1] + Contact)
                limits.Add(at);
        }

        return limits;
    }

    private void More(int[] counts, int stretch, List<double> limits)
    {
        counts[stretch]++;
        if (!Stitches.IsOwnMirror)
            return;
        var partner = counts.Length - 1 - stretch;
        if (partner != stretch)
            counts[partner] = counts[stretch];
        else if (counts[stretch] % 2 == 0 && !Stitches.IsMiddleFree && limits.Count % 2 == 0)
            counts[stretch]++;
    }

    private List<double> Built(List<double> limits, int[] counts)
    {
        List<double> marks = [0];
        for (var s = 0; s < counts.Length; s++)
        {
            var (from, to, n) = (limits[s], limits[s + 1], counts[s]);
            double[] parts = [.. Enumerable.Range(0, n).Select(k => (s == 0 && k == 0) || (s == counts.Length - 1 && k == n - 1) ? EndSpan : 1)];
            var (sum, total) = (0.0, parts.Sum());
            for (var k = 0; k < n - 1; k++)
            {
                sum += parts[k];
                var at = Stitches.Nearest(from + ((to - from) * sum / total));
                if (at > marks[^1] + Contact && at < to - Contact)
                    marks.Add(at);
            }

            marks.Add(to);
        }

        return marks;
    }
}
