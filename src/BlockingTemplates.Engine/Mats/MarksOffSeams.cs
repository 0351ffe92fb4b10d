using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Moves marks that stand near a seam by one stitch, where that takes them out.</summary>
internal static class MarksOffSeams
{
    /// <summary>The plan with what could be moved moved, in the order of the marks' numbers.</summary>
    /// <remarks>
    /// Of the two directions, the one that leaves the greater distance to a seam is taken, forward if both leave the same.
    /// A move counts only if every mark it moved (a mirror partner too) then stands clear.
    /// </remarks>
    public static PinPlan Moved(PinPlan plan, LaidMats mats, double clearance, Func<PinPlan, int, int, PinPlan?> move)
    {
        foreach (var number in plan.Marks.Select(m => m.Number).ToArray())
        {
            var mark = plan.Marks.First(m => m.Number == number);
            if (!LaidMats.IsNear(mats.SeamDistance(mark.At), clearance))
                continue;
            var (forward, clearForward) = Tried(plan, mats, number, 1, move);
            var (back, clearBack) = Tried(plan, mats, number, -1, move);
            var (better, clear) = clearBack > clearForward ? (back, clearBack) : (forward, clearForward);
            if (better is not null && !LaidMats.IsNear(clear, clearance))
                plan = better;
        }

        return plan;
    }

    private static (PinPlan? Plan, double Clear) Tried(
        PinPlan plan, LaidMats mats, int number, int stitches, Func<PinPlan, int, int, PinPlan?> move)
    {
        if (move(plan, number, stitches) is not { } moved)
            return (null, double.NegativeInfinity);
        var places = plan.Marks.ToDictionary(m => m.Number, m => m.At);
        var clear = moved.Marks
            .Where(m => m.Number == number || m.At != places[m.Number])
            .Min(m => mats.SeamDistance(m.At));
        return (moved, clear);
    }
}
