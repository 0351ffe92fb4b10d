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

    /// <summary>Probes across a cell; odd, so that one stands in its middle.</summary>
    private const int ProbesAcross = 5;

    /// <summary>The map of a cloth at rest: of each cell the mean over probes, since single triangles beside pins stand out.</summary>
    internal static StretchMap Of(TriangleMesh mesh, Equilibrium rest)
    {
        var box = Box.Around(rest.Places);
        var side = Math.Max(Step, Math.Ceiling(Math.Max(box.Width, box.Height) / CellsAcross / Step) * Step);
        var pitch = side / ProbesAcross;
        var found = new SortedDictionary<(int Row, int Column), Probes>();
        for (var t = 0; t < mesh.Triangles.Count; t++)
        {
            var (i, j, k) = mesh.Triangles[t];
            var (a, b, c) = (rest.Places[i], rest.Places[j], rest.Places[k]);
            var turn = Math.Sign((b - a).Cross(c - a));
            if (turn == 0)
                continue;
            for (var row = First(Math.Min(a.Y, Math.Min(b.Y, c.Y)), box.Lower); Probe(row, box.Lower) <= Math.Max(a.Y, Math.Max(b.Y, c.Y)); row++)
            {
                for (var column = First(Math.Min(a.X, Math.Min(b.X, c.X)), box.Left); Probe(column, box.Left) <= Math.Max(a.X, Math.Max(b.X, c.X)); column++)
                {
                    var p = new Point(Probe(column, box.Left), Probe(row, box.Lower));
                    if (turn * (b - a).Cross(p - a) < 0 || turn * (c - b).Cross(p - b) < 0 || turn * (a - c).Cross(p - c) < 0)
                        continue;
                    var cell = (row / ProbesAcross, column / ProbesAcross);
                    var isMiddle = row % ProbesAcross == ProbesAcross / 2 && column % ProbesAcross == ProbesAcross / 2;
                    found[cell] = found.GetValueOrDefault(cell).With(rest.Stretches[t], isMiddle);
                }
            }
        }

        return new(side, [.. found.Where(f => f.Value.HasMiddle).Select(f => new StretchCell(
            f.Key.Column, f.Key.Row, new(Middle(f.Key.Column, box.Left), Middle(f.Key.Row, box.Lower)), f.Value.Along / f.Value.Count, f.Value.Across / f.Value.Count, f.Value.State))]);
        double Middle(int index, double from) => from + ((index + 0.5) * side);
        double Probe(int index, double from) => from + ((index + 0.5) * pitch);
        int First(double low, double from) => Math.Max(0, (int)Math.Ceiling(((low - from) / pitch) - 0.5));
    }

    /// <summary>Sums over the probes of a cell that lie on the cloth.</summary>
    private readonly record struct Probes(double Along, double Across, int Slack, int Wrinkled, int Taut, bool HasMiddle)
    {
        public int Count => Slack + Wrinkled + Taut;

        /// <summary>How most of the cell carries its pull.</summary>
        public ClothState State => Taut >= Wrinkled && Taut >= Slack ? ClothState.Taut : Wrinkled >= Slack ? ClothState.Wrinkled : ClothState.Slack;

        public Probes With(ClothStretch stretch, bool isMiddle) => new(
            Along + stretch.Along,
            Across + stretch.Across,
            Slack + (stretch.State == ClothState.Slack ? 1 : 0),
            Wrinkled + (stretch.State == ClothState.Wrinkled ? 1 : 0),
            Taut + (stretch.State == ClothState.Taut ? 1 : 0),
            HasMiddle || isMiddle);
    }
}
