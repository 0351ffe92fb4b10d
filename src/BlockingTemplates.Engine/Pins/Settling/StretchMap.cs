using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Stretch of the pinned cloth on a square grid of cells.</summary>
/// <param name="CellMm">Side of a cell, in millimetres.</param>
/// <param name="Cells">The cells whose middle lies on the cloth, by rows from the lower left.</param>
public sealed record StretchMap(double CellMm, IReadOnlyList<StretchCell> Cells)
{
    private const int CellsAcross = 40;
    private const double Step = 5;

    /// <summary>The map of a cloth at rest.</summary>
    internal static StretchMap Of(TriangleMesh mesh, Equilibrium rest)
    {
        var box = Box.Around(rest.Places);
        var side = Math.Max(Step, Math.Ceiling(Math.Max(box.Width, box.Height) / CellsAcross / Step) * Step);
        var found = new SortedDictionary<(int Row, int Column), ClothStretch>();
        for (var t = 0; t < mesh.Triangles.Count; t++)
        {
            var (i, j, k) = mesh.Triangles[t];
            var (a, b, c) = (rest.Places[i], rest.Places[j], rest.Places[k]);
            var turn = Math.Sign((b - a).Cross(c - a));
            if (turn == 0)
                continue;
            for (var row = First(Math.Min(a.Y, Math.Min(b.Y, c.Y)), box.Lower); Middle(row, box.Lower) <= Math.Max(a.Y, Math.Max(b.Y, c.Y)); row++)
            {
                for (var column = First(Math.Min(a.X, Math.Min(b.X, c.X)), box.Left); Middle(column, box.Left) <= Math.Max(a.X, Math.Max(b.X, c.X)); column++)
                {
                    var p = new Point(Middle(column, box.Left), Middle(row, box.Lower));
                    if (turn * (b - a).Cross(p - a) >= 0 && turn * (c - b).Cross(p - b) >= 0 && turn * (a - c).Cross(p - c) >= 0)
                        found.TryAdd((row, column), rest.Stretches[t]);
                }
            }
        }

        return new(side, [.. found.Select(f => new StretchCell(
            f.Key.Column, f.Key.Row, new(Middle(f.Key.Column, box.Left), Middle(f.Key.Row, box.Lower)), f.Value.Along, f.Value.Across, f.Value.State))]);
        double Middle(int index, double from) => from + ((index + 0.5) * side);
        int First(double low, double from) => Math.Max(0, (int)Math.Ceiling(((low - from) / side) - 0.5));
    }
}
