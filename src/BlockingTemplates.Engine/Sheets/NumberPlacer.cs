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
        foreach (var mark in spots.OfMarks)
        {
            if (!mark.Outside.Any(spot => layout.SheetHolding(spot.Box) is not null) && ++count >= enough)
                break;
        }

        return count;
    }

    /// <summary>The places of all printed numbers, in their order.</summary>
    /// <param name="plan">The marks.</param>
    /// <param name="spots">The spots of those that are printed.</param>
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
        List<NumberPlace> places = [];
        // Those with the least choice first.
        foreach (var mark in spots.OfMarks.OrderBy(m => m.FullSize.Count(s => layout.SheetHolding(s.Box) is not null)).ThenBy(m => m.Mark.Number))
        {
            var place = Place(mark, layout, taken);
            taken.Add(place.Spot.Box);
            taken.AddLeader(mark.Mark.At, place.LeaderTo);
            places.Add(place);
        }

        return [.. places.OrderBy(p => p.Number)];
    }

    private static NumberPlace Place(MarkSpots mark, SheetLayout layout, TakenPlaces taken)
    {
        (NumberSpot Spot, Sheet Sheet)? first = null;
        foreach (var spot in mark.All)
        {
            if (layout.SheetHolding(spot.Box) is not { } sheet)
                continue;
            first ??= (spot, sheet);
            if (IsFree(taken, mark.Mark.At, spot.Box))
                return At(mark, spot, sheet, false);
        }

        var (crowded, on) = first ?? Anywhere(mark, layout);
        return At(mark, crowded, on, true);
    }

    private static NumberPlace At(MarkSpots mark, NumberSpot spot, Sheet sheet, bool isCrowded) =>
        new(mark.Mark.Number, mark.Partner, spot, SegmentBox.Nearest(mark.Mark.At, spot.Box), sheet, isCrowded);

    private static bool IsFree(TakenPlaces taken, Point mark, Box box)
    {
        var to = SegmentBox.Nearest(mark, box);
        var from = mark.Toward(to, Math.Min(1, 1.5 * MarkHalfSizeMm / Math.Max(mark.DistanceTo(to), 1e-9)));
        return taken.IsFree(box.Grown(BetweenMm)) && taken.IsFreeForLeader(from, to);
    }

    private static (NumberSpot Spot, Sheet Sheet) Anywhere(MarkSpots mark, SheetLayout layout)
    {
        // The sheet is smaller than the number's surroundings: it stands on the mark's own sheet, as far in as it goes.
        var sheet = layout.Owner(mark.Mark.At) ?? layout.Sheets[0];
        var print = layout.PrintedBox(sheet);
        var spot = mark.All.LastOrDefault(new NumberSpot(Box.About(mark.Mark.At, 10, 6), 4, true));
        var dx = Math.Max(print.Left - spot.Box.Left, 0) + Math.Min(print.Right - spot.Box.Right, 0);
        var dy = Math.Max(print.Lower - spot.Box.Lower, 0) + Math.Min(print.Upper - spot.Box.Upper, 0);
        return (spot with { Box = spot.Box.Moved(new(dx, dy)) }, sheet);
    }
}
