using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Finds as few pins as keep every gap's scallop within the tolerance on the computed cloth.</summary>
/// <remarks>
/// Pass after pass the cloth is brought to rest, the spacing it needs is fitted gap by gap and the pins are shared out anew;
/// then gaps that still dip too far get closer pins, and last each run of edges is tried with one pin fewer.
/// </remarks>
internal sealed class ClothSpacing(PinnedCloth cloth, Piece piece, SpacingLimits limits, Computation computation)
{
    private const int Passes = 5;
    private const int Tightenings = 8;
    private const int Leavings = 4;
    private const double Aim = 0.975;
    private const double Tighter = 0.94;

    private readonly WirePulls _pulls = new();

    private SettledPins? _best;

    /// <summary>The best pins found, or null where no equilibrium converged.</summary>
    /// <param name="start">A plan to start from.</param>
    internal SettledPins? Find(PinPlan start)
    {
        if (Settled(start, null) is not { } settled)
            return null;
        settled = Fitted(settled);
        var profile = NeededSpacing.Of(settled, limits, Aim);
        for (var pass = 0; pass < Passes; pass++)
        {
            computation.Tell("spacing the pins", (double)pass / Passes);
            if (Settled(Placed(settled.Plan, profile), settled) is not { } next)
                return _best ?? settled;
            settled = Fitted(next);
            if (Keep(settled) && pass >= 2)
                break;
            var needed = NeededSpacing.Of(settled, limits, Aim);
            profile = pass < 1 ? needed : Between(settled, profile, needed);
        }

        for (var k = 0; k < Tightenings && _best is null; k++)
        {
            var (now, before) = (settled, profile);
            double[] tighter = [.. now.Gaps.Select(g =>
            {
                var mm = before.At(g.MiddleMm % before.LengthMm);
                return limits.Keeps(g) ? mm : Math.Max(Math.Min(mm, g.WidthMm) * Tighter, Math.Min(limits.LeastMm, mm));
            })];
            profile = NeededSpacing.Profile(now.Plan, now.Gaps, NeededSpacing.Mirrored(now.Plan, now.Gaps, tighter));
            if (Settled(Placed(now.Plan, profile), now) is not { } next)
                break;
            settled = Fitted(next);
            Keep(settled);
        }

        return _best is { } best ? Fewer(best) : settled;
    }

    /// <summary>The pins with one fewer on each run of edges that can do without, again and again.</summary>
    private SettledPins Fewer(SettledPins best)
    {
        var profile = best.Plan.Profile!;
        var fewer = new Dictionary<int, int>();
        HashSet<int> done = [];
        int[] runs = [.. Enumerable.Range(0, piece.Edges.Count).Select(e => RunOf(best.Plan, e)).Distinct()];
        for (var k = 0; k < Leavings; k++)
        {
            int[] trying = [.. runs.Where(r => !done.Contains(r))];
            if (trying.Length == 0 || Tried(trying) is not { } tried)
                break;
            int[] failing = [.. tried.Gaps.Where(g => !limits.Keeps(g)).SelectMany(g => new[] { RunOf(best.Plan, g.Edge) }).Distinct()];
            done.UnionWith(failing);
            int[] passing = [.. trying.Where(r => !failing.Contains(r))];
            if (failing.Length > 0 && (passing.Length == 0 || (tried = Tried(passing)) is null))
                continue;
            if (!tried.Gaps.All(limits.Keeps) || tried.Plan.Marks.Count >= best.Plan.Marks.Count)
                break;
            foreach (var run in passing)
                fewer[run] = fewer.GetValueOrDefault(run) + 1;
            best = tried;
        }

        return best;

        SettledPins? Tried(int[] without)
        {
            computation.Tell("trying fewer pins", 1);
            var plan = PinPlanner.Respaced(best.Plan, piece, profile, e =>
            {
                var run = RunOf(best.Plan, e);
                return fewer.GetValueOrDefault(run) + (without.Contains(run) ? 1 : 0);
            });
            return plan.Marks.Count < best.Plan.Marks.Count && KeepsWidths(plan) ? Settled(plan with { Profile = profile }, best) : null;
        }
    }

    private bool KeepsWidths(PinPlan plan) => MarkSpan.Of(plan).All(s => s.IsWired || s.WidthMm <= limits.MostMm + 1e-6);

    /// <summary>Remembers the best pins that keep everything; whether these do.</summary>
    private bool Keep(SettledPins settled)
    {
        if (!settled.Gaps.All(limits.Keeps))
            return false;
        if (_best is null || settled.Plan.Marks.Count < _best.Plan.Marks.Count)
            _best = settled;
        return true;
    }

    private SettledPins? Settled(PinPlan plan, SettledPins? near)
    {
        if (computation.IsTimeUp && near is not null)
            return null;
        var settled = cloth.Settle(plan, near?.Rest.Places, computation);
        return settled.Rest.Converged ? settled : null;
    }

    /// <summary>The marks by a profile, let out where gaps would come under the least.</summary>
    private PinPlan Placed(PinPlan plan, SpacingProfile profile)
    {
        var placed = PinPlanner.Respaced(plan, piece, profile);
        for (var k = 0; k < 4; k++)
        {
            var gaps = MarkSpan.Of(placed).Select(s => (Gap: new MarkGap(s.From, s.To, s.FromMm, s.WidthMm, 0, 0, 0, null), IsShort: !s.IsWired && s.WidthMm < limits.LeastMm - 1e-6)).ToList();
            if (!gaps.Exists(g => g.IsShort))
                break;
            List<MarkGap> all = [.. gaps.Select(g => g.Gap)];
            double[] wider = [.. gaps.Select(g => profile.At(g.Gap.MiddleMm % profile.LengthMm) * (g.IsShort ? Math.Max(1.02, limits.LeastMm / g.Gap.WidthMm) : 1))];
            profile = NeededSpacing.Profile(placed, all, [.. NeededSpacing.Mirrored(placed, all, [.. wider.Select(w => -w)]).Select(w => -w)]);
            placed = PinPlanner.Respaced(plan, piece, profile);
        }

        return placed;
    }

    /// <summary>The same with the pull on each wired edge as the computed sag of its wire tells, for the next placing.</summary>
    private SettledPins Fitted(SettledPins settled) => settled.Plan.Wired.Count == 0
        ? settled
        : settled with { Plan = settled.Plan with { Pulls = _pulls.Fitted(settled) } };

    /// <summary>Half-way between two profiles, so that passes do not swing.</summary>
    private static SpacingProfile Between(SettledPins settled, SpacingProfile before, SpacingProfile needed) =>
        NeededSpacing.Profile(settled.Plan, settled.Gaps, [.. settled.Gaps.Select(g =>
        {
            var arc = g.MiddleMm % before.LengthMm;
            return Math.Sqrt(before.At(arc) * needed.At(arc));
        })]);

    /// <summary>A number for the run of edges between corners that an edge belongs to, the same for the run that mirrors it.</summary>
    private static int RunOf(PinPlan plan, int edge)
    {
        var start = Start(edge);
        return plan.Mirror is { } mirror ? Math.Min(start, Start(mirror.Partner[edge])) : start;
        int Start(int e)
        {
            for (var k = 0; k < plan.Edges.Count && plan.Pinned.Corners[e].Smooth; k++)
                e = (e + plan.Edges.Count - 1) % plan.Edges.Count;
            return plan.Pinned.Corners[e].Smooth ? 0 : e;
        }
    }
}
