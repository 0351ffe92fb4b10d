using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>A region of the cloth: slanted lines over it and a heavy line round it, within the outline.</summary>
internal static class RegionHatch
{
    private const double ProbeMm = 0.3;
    private const int Passes = 2;
    private static readonly Stroke Edge = new(0.6);

    /// <summary>The lines of a hatch.</summary>
    public static Stroke Line { get; } = new(0.22, 0.1);

    /// <summary>Distance between the lines of a hatch, in millimetres.</summary>
    public const double PitchMm = 2.2;

    /// <summary>The slanted lines over a region, rising to the right or falling.</summary>
    public static IEnumerable<Element> Hatch(ClothRegion region, StretchMap map, InsideArea area, FramePlacing placing, bool isFalling)
    {
        var cells = Smoothed(region, map);
        var first = map.Cells[0];
        var origin = first.At - new Vector((first.Column + 0.5) * map.CellMm, (first.Row + 0.5) * map.CellMm);
        var box = Box.Around(region.Cells.Select(c => placing.On(c.At))).Grown(placing.Scale * map.CellMm);
        var along = Vector.AtAngle((isFalling ? -1 : 1) * Math.PI / 4);
        var across = along.TurnedLeft;
        var reach = double.Hypot(box.Width, box.Height) / 2;
        List<PathStep> steps = [];
        for (var k = -(int)(reach / PitchMm); k <= reach / PitchMm; k++)
        {
            var middle = box.Centre + (k * PitchMm * across);
            Point? start = null;
            for (var s = -reach; s <= reach; s += ProbeMm)
            {
                var p = middle + (s * along);
                if (IsIn(p))
                {
                    start ??= p;
                }
                else if (start is { } from)
                {
                    steps.AddRange(PathSteps.Line(from, p - (ProbeMm * along)));
                    start = null;
                }
            }
        }

        if (steps.Count > 0)
            yield return new PathElement(steps, Line);

        bool IsIn(Point p)
        {
            var at = placing.Off(p);
            return cells.Contains(((int)Math.Floor((at.X - origin.X) / map.CellMm), (int)Math.Floor((at.Y - origin.Y) / map.CellMm))) && area.Holds(p);
        }
    }

    /// <summary>The line between a region and the cloth beside it; at the outline the outline stands for it.</summary>
    public static IEnumerable<Element> Border(ClothRegion region, StretchMap map, FramePlacing placing)
    {
        var cells = Smoothed(region, map);
        var all = map.Cells.Select(c => (c.Column, c.Row)).ToHashSet();
        var half = map.CellMm / 2;
        List<PathStep> steps = [];
        foreach (var cell in map.Cells.Where(c => cells.Contains((c.Column, c.Row))))
        {
            foreach (var (dx, dy) in new[] { (1, 0), (0, 1), (-1, 0), (0, -1) })
            {
                var beside = (cell.Column + dx, cell.Row + dy);
                if (cells.Contains(beside) || !all.Contains(beside))
                    continue;
                var (out1, along) = (new Vector(dx * half, dy * half), new Vector(-dy * half, dx * half));
                steps.AddRange(PathSteps.Line(placing.On(cell.At + out1 - along), placing.On(cell.At + out1 + along)));
            }
        }

        if (steps.Count > 0)
            yield return new PathElement(steps, Edge);
    }

    /// <summary>The cells of a region as drawn: as most of the nine cells about each, so that single cells do not stand out.</summary>
    private static HashSet<(int Column, int Row)> Smoothed(ClothRegion region, StretchMap map)
    {
        var cells = region.Cells.Select(c => (c.Column, c.Row)).ToHashSet();
        var all = map.Cells.Select(c => (c.Column, c.Row)).ToHashSet();
        for (var pass = 0; pass < Passes; pass++)
        {
            cells = [.. all.Where(c =>
            {
                var about = (from x in new[] { -1, 0, 1 } from y in new[] { -1, 0, 1 } select (c.Column + x, c.Row + y)).Where(all.Contains).ToList();
                return 2 * about.Count(cells.Contains) > about.Count;
            })];
        }

        return cells;
    }
}
