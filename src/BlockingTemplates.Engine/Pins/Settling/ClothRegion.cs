using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Cells of the stretch map that hang together and of which the same is to be told.</summary>
/// <param name="Cells">The cells.</param>
/// <param name="Middle">Their middle.</param>
/// <param name="AreaMm2">Their area, in square millimetres.</param>
public sealed record ClothRegion(IReadOnlyList<StretchCell> Cells, Point Middle, double AreaMm2)
{
    /// <summary>Regions under this share of the piece are no more than a pucker at a pin.</summary>
    private const double LeastShare = 0.01;

    /// <summary>The regions that carry nothing, largest first.</summary>
    internal static IReadOnlyList<ClothRegion> Slack(StretchMap map) => Of(map, c => c.State == ClothState.Slack);

    /// <summary>The regions stretched beyond limits along or across the rows, largest first.</summary>
    internal static IReadOnlyList<ClothRegion> Beyond(StretchMap map, double along, double across) => Of(map, c => c.Along > along || c.Across > across);

    private static List<ClothRegion> Of(StretchMap map, Func<StretchCell, bool> counts)
    {
        var left = map.Cells.Where(counts).ToDictionary(c => (c.Column, c.Row));
        List<ClothRegion> regions = [];
        foreach (var first in map.Cells.Where(counts))
        {
            if (!left.Remove((first.Column, first.Row)))
                continue;
            List<StretchCell> cells = [first];
            for (var i = 0; i < cells.Count; i++)
            {
                foreach (var (dx, dy) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1) })
                {
                    if (left.Remove((cells[i].Column + dx, cells[i].Row + dy), out var next))
                        cells.Add(next);
                }
            }

            if (cells.Count >= Math.Max(2, LeastShare * map.Cells.Count))
                regions.Add(new(cells, new(cells.Average(c => c.At.X), cells.Average(c => c.At.Y)), cells.Count * map.CellMm * map.CellMm));
        }

        return [.. regions.OrderByDescending(r => r.Cells.Count)];
    }
}
