using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>Puts every number where it is seen whole on one sheet and touches nothing.</summary>
public static class NumberPlacer
{
    private const double BetweenMm = 0.6;
    private const double MarkHalfSizeMm = 5;

    /// <summary>How many numbers cannot stand outside the outline with a page grid, each taken by itself.</summary>
    /// <param name="spots">The spots of all numbers.</param>
    /// <param name="layout">The sheets.</param>
    /// <param name="enough">The count stops here: a layout that has so many is no better than one known already.</param>
    public static int CountInside(NumberSpots spots, SheetLayout layout, int enough = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(spots);
        ArgumentNullException.ThrowIfNull(layout);
        var count = 0;
        foreach (var ofMark in spots.OfMark)
        {
            if (!ofMark.Any(spot => !spot.IsInside && layout.SheetHolding(spot.Box) is not null) && ++count >= enough)
                break;
        }

        return count;
    }

    /// <summary>The places of all numbers, in their order.</summary>
    /// <param name="plan">The marks.</param>
    /// <param name="spots">Their spots.</param>
    /// <param name="layout">The sheets.</param>
    /// <param name="kept">Boxes where no number may stand, such as the crosses on the cut lines.</param>
    public static IReadOnlyList<NumberPlace> Place(PinPlan plan, NumberSpots spots, SheetLayout layout, IEnumerable<Box> kept)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(spots);
        ArgumentNullException.ThrowIfNull(layout);
        var taken = new TakenPlaces();
        foreach (var mark in plan.Marks)
            taken.Add(Box.About(mark.At, 2 * MarkHalfSizeMm, 2 * MarkHalfSizeMm));
        foreach (var box in kept)
            taken.Add(box);
        // Those with the least choice first.
        var seen = plan.Marks.Select(m => spots.OfMark[m.Number - 1]
            .Select(s => (Spot: s, Sheet: layout.SheetHolding(s.Box)))
            .Where(s => s.Sheet is not null).Select(s => (s.Spot, Sheet: s.Sheet!)).ToList()).ToList();
        var places = new NumberPlace[plan.Marks.Count];
        foreach (var mark in plan.Marks.OrderBy(m => seen[m.Number - 1].Count).ThenBy(m => m.Number))
        {
            var choice = seen[mark.Number - 1];
            var free = choice.FindIndex(c => IsFree(taken, mark.At, c.Spot.Box));
            var (spot, sheet) = free >= 0 ? choice[free] : choice.Count > 0 ? choice[0] : Anywhere(spots.OfMark[mark.Number - 1], layout, mark);
            var to = SegmentBox.Nearest(mark.At, spot.Box);
            taken.Add(spot.Box);
            taken.AddLeader(mark.At, to);
            places[mark.Number - 1] = new(mark.Number, spot, to, sheet, free < 0);
        }

        return places;
    }

    private static bool IsFree(TakenPlaces taken, Point mark, Box box)
    {
        var to = SegmentBox.Nearest(mark, box);
        var from = mark.Toward(to, Math.Min(1, 1.5 * MarkHalfSizeMm / Math.Max(mark.DistanceTo(to), 1e-9)));
        return taken.IsFree(box.Grown(BetweenMm)) && taken.IsFreeForLeader(from, to);
    }

    private static (NumberSpot Spot, Sheet Sheet) Anywhere(IReadOnlyList<NumberSpot> spots, SheetLayout layout, Mark mark)
    {
        // The sheet is smaller than the number's surroundings: it stands on the mark's own sheet, as far in as it goes.
        var sheet = layout.Owner(mark.At) ?? layout.Sheets[0];
        var print = layout.PrintedBox(sheet);
        var spot = spots.Count > 0 ? spots[^1] : new(Box.About(mark.At, 10, 6), 4, true);
        var dx = Math.Max(print.Left - spot.Box.Left, 0) + Math.Min(print.Right - spot.Box.Right, 0);
        var dy = Math.Max(print.Lower - spot.Box.Lower, 0) + Math.Min(print.Upper - spot.Box.Upper, 0);
        return (spot with { Box = spot.Box.Moved(new(dx, dy)) }, sheet);
    }
}
