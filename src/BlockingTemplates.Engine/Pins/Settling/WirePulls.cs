namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>From the computed sag of wires to the pull that a beam of the same sag is under.</summary>
/// <remarks>The marks of a wire are placed as those of a beam; how far it really sags is computed with cloth and wire together. The two are brought together by the pull.</remarks>
internal sealed class WirePulls
{
    private const double Aim = 0.95;
    private const double Apart = 0.02;
    private const double LeastChange = 0.4;
    private const double MostChange = 2.5;

    /// <summary>For each edge the greatest pull whose marks were too few: it never goes back to that, or marks would come and go without end.</summary>
    private readonly Dictionary<int, double> _tooLittle = [];

    /// <summary>The pulls on the wired edges, those of mirrored edges alike.</summary>
    internal Dictionary<int, EdgePull> Fitted(SettledPins settled)
    {
        var plan = settled.Plan;
        var pulls = new Dictionary<int, EdgePull>();
        foreach (var wired in plan.Wired)
        {
            var partner = plan.Mirror?.Partner[wired.Edge] ?? wired.Edge;
            var worst = settled.Gaps.Where(g => g.Edge == wired.Edge || g.Edge == partner).Select(g => Math.Abs(g.ScallopMm) - wired.DipBetweenStitchesMm).DefaultIfEmpty(0).Max();
            var share = worst / wired.ToleranceMm;
            // Kept as it is where the sag is within the tolerance and not far below it.
            var change = share > 1 || share < Aim * Aim ? Math.Clamp(share / Aim, LeastChange, MostChange) : 1;
            if (share > 1)
                _tooLittle[wired.Edge] = Math.Max(_tooLittle.GetValueOrDefault(wired.Edge), wired.Pull.Most);
            else if (change * wired.Pull.Most <= _tooLittle.GetValueOrDefault(wired.Edge) * (1 + Apart))
                change = 1;
            pulls[wired.Edge] = wired.Pull with { Least = change * wired.Pull.Least, Most = change * wired.Pull.Most };
        }

        return pulls;
    }
}
