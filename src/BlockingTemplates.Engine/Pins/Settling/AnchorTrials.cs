using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Compares where the pinning may start: the foot, the middle of the top, all of the top edge, and what the maker asked for.</summary>
/// <remarks>
/// For each a few pins (about <see cref="Pins"/>, evenly spaced) are set in the order of the rounds on a coarse mesh, and the
/// greatest force on a pin just after it is set is told.
/// </remarks>
internal static class AnchorTrials
{
    /// <summary>About how many pins are set in a trial.</summary>
    internal const int Pins = 24;

    private const int RimNodes = 160;

    /// <summary>Forces this near count as equal, and the anchor named first is taken.</summary>
    private const double Equal = 0.01;

    /// <summary>The trials, least force first; none where no cloth came to rest.</summary>
    internal static IReadOnlyList<AnchorTrial> Of(Piece piece, PinSettings settings, ClothMaterial material, Computation computation)
    {
        string[] names = [.. Candidates(piece.Finished, settings.Anchor)];
        var node = piece.Unblocked!.Length / RimNodes;
        var few = settings with { Spacing = Length.FromMillimetres(piece.Finished.Length / Pins), MinSpacing = Length.FromMillimetres(piece.Finished.Length / Pins) };
        var forces = new (double Force, int Mark)?[names.Length];
        Parallel.For(0, names.Length, new() { MaxDegreeOfParallelism = 2, CancellationToken = computation.Cancellation }, i =>
        {
            var plan = PinPlanner.Placed(piece, few with { Anchor = names[i] }, new Findings());
            if (plan is null)
                return;
            using var pinned = new PinnedCloth(piece, material.Likely, node) { NewtonsPerMm = material.NewtonsPerMm };
            var pulls = PinningInTurn.Of(plan, pinned, 1, plan.Marks.Count, computation, withForces: true);
            if (pulls.Count == plan.Marks.Count && pulls.Exists(p => p.Force is not null))
                forces[i] = pulls.Select((p, k) => (p.Force ?? 0, k + 1)).MaxBy(p => p.Item1);
        });
        var known = names.Zip(forces).Where(t => t.Second is { Force: > 0 }).Select(t => (Name: t.First, t.Second!.Value.Force, t.Second.Value.Mark)).ToList();
        if (known.Count == 0)
            return [];
        var (most, least) = (known.Max(k => k.Force), known.Min(k => k.Force));
        var taken = settings.Anchor ?? known.First(k => k.Force <= least * (1 + Equal)).Name;
        return [.. known.OrderBy(k => k.Name == taken ? 0 : 1).ThenBy(k => k.Force).Select(k => new AnchorTrial(k.Name, k.Force / most, k.Mark, k.Name == taken))];
    }

    private static IEnumerable<string> Candidates(Outline finished, string? asked)
    {
        var usual = Anchor.Find(null, finished, new Findings())!.Name;
        var top = Top(finished);
        return new[] { asked == PinSettings.NoAnchor ? null : asked, usual, PinSettings.MiddleOf + top, top }.OfType<string>().Distinct();
    }

    /// <summary>The edge named top, else the one that runs farthest to the left, as the upper edge of a counter-clockwise outline does.</summary>
    private static string Top(Outline finished) =>
        finished.Edges.FirstOrDefault(e => e.Name == "top")?.Name ?? finished.Edges.MinBy(e => e.Curve.End.X - e.Curve.Start.X)!.Name;
}
