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
    private const int Leavings = 8;
    private const int FewGaps = 4;
    private const double Aim = 0.975;
    private const double Tighter = 0.94;

    private SettledPins? _best;

    /// <summary>The best pins found, or null where no equilibrium converged.</summary>
    /// <param name="start">A plan to start from.</param>
    internal SettledPins? Find(PinPlan start)
    {
        if (Settled(start, null) is not { } settled)
            return null;
        // Cloth that is slack along most of its edge asks for no pins: those of the spacing setting stay.
        if (settled.Gaps.Count(g => g.Determined == false) > settled.Gaps.Count / 2)
            return settled;
        var profile = NeededSpacing.Of(settled, limits, Aim);
        for (var pass = 0; pass < Passes; pass++)
        {
            computation.Tell("spacing the pins", (double)pass / Passes);
            if (Settled(Placed(settled.Plan, profile), settled) is not { } next)
                return _best ?? settled;
            settled = next;
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
            settled = next;
            Keep(settled);
        }

        return _best is { } best ? Fewer(best) : settled;
    }

    /// <summary>
    /// The pins with one fewer on each run of edges that can do without, again and again; a run of few gaps that cannot do
    /// with one fewer may do with two or three (where a wide gap follows the line better than two).
    /// </summary>
    private SettledPins Fewer(SettledPins best)
    {
        var profile = best.Plan.Profile!;
        var runs = best.Gaps.GroupBy(g => RunOf(best.Plan, g.Edge)).ToDictionary(g => g.Key, g => g.Count());
        var fewer = runs.Keys.ToDictionary(r => r, _ => 0);
        var step = runs.Keys.ToDictionary(r => r, _ => 1);
        for (var k = 0; k < Leavings; k++)
        {
            if (Tried() is not { } tried)
                break;
            int[] failing = [.. tried.Gaps.Where(g => !limits.Keeps(g)).Select(g => RunOf(best.Plan, g.Edge)).Distinct()];
            if (failing.Length == 0)
            {
                best = tried;
                foreach (var run in step.Keys)
                    fewer[run] += step[run];
                continue;
            }

            foreach (var run in failing.Where(step.ContainsKey))
            {
                if (runs[run] <= FewGaps && step[run] < runs[run])
                    step[run]++;
                else
                    step.Remove(run);
            }

        }

        // What failed in company may do alone.
        foreach (var run in runs.Keys.Where(r => runs[r] <= FewGaps).OrderBy(r => runs[r]))
        {
            step = new() { [run] = 1 };
            if (Tried() is not { } tried || !tried.Gaps.All(limits.Keeps))
                continue;
            best = tried;
            fewer[run]++;
        }

        return best;

        SettledPins? Tried()
        {
            computation.Tell("trying fewer pins", 1);
            var plan = PinPlanner.Respaced(best.Plan, piece, profile, e => fewer.GetValueOrDefault(RunOf(best.Plan, e)) + step.GetValueOrDefault(RunOf(best.Plan, e)));
            return step.Count > 0 && plan.Marks.Count < best.Plan.Marks.Count && KeepsWidths(plan, best) ? Settled(plan with { Profile = profile }, best) : null;
        }
    }

    private bool KeepsWidths(PinPlan plan, SettledPins best)
    {
        var arcs = Arcs(plan);
        var most = Math.Max(limits.MostMm, best.Gaps.Max(g => g.WidthMm));
        return Enumerable.Range(0, arcs.Length).All(i => Width(plan, arcs, i) <= most + 1e-6);
    }

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
            var arcs = Arcs(placed);
            var isShort = Enumerable.Range(0, arcs.Length).Where(i => !IsSet(placed, arcs[i].Number) && Width(placed, arcs, i) < limits.LeastMm - 1e-6).ToList();
            if (isShort.Count == 0)
                break;
            var gaps = Enumerable.Range(0, arcs.Length).Select(i => new MarkGap(
                arcs[i].Number, arcs[(i + 1) % arcs.Length].Number, arcs[i].Arc, Width(placed, arcs, i), 0, 0, 0, null)).ToList();
            double[] wider = [.. gaps.Select((g, i) => profile.At(g.MiddleMm % profile.LengthMm) * (isShort.Contains(i) ? Math.Max(1.02, limits.LeastMm / g.WidthMm) : 1))];
            profile = NeededSpacing.Profile(placed, gaps, [.. NeededSpacing.Mirrored(placed, gaps, [.. wider.Select(w => -w)]).Select(w => -w)]);
            placed = PinPlanner.Respaced(plan, piece, profile);
        }

        return placed;
    }

    private static (double Arc, int Number)[] Arcs(PinPlan plan)
    {
        var starts = new double[plan.Edges.Count + 1];
        for (var e = 0; e < plan.Edges.Count; e++)
            starts[e + 1] = starts[e] + plan.Edges[e].PinnedMm;
        return [.. plan.Marks.Select(m => (starts[m.Edge] + (m.Fraction * plan.Edges[m.Edge].PinnedMm), m.Number)).Order()];
    }

    /// <summary>Whether the gap after a mark lies on an edge whose marks stand where the maker said.</summary>
    private static bool IsSet(PinPlan plan, int number) => plan.Edges[plan.Marks[number - 1].Edge].Treatment.HasSetPlaces;

    private static double Width(PinPlan plan, (double Arc, int Number)[] arcs, int i) =>
        i + 1 < arcs.Length ? arcs[i + 1].Arc - arcs[i].Arc : arcs[0].Arc + plan.Edges.Sum(e => e.PinnedMm) - arcs[i].Arc;

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
