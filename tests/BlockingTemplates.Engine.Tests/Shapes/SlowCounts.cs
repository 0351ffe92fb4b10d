using BlockingTemplates.Engine.Shapes;
using NetTopologySuite.Geometries;

namespace BlockingTemplates.Engine.Tests.Shapes;

/// <summary>The slow and obvious second way: every cell of a generous box is asked on its own.</summary>
internal static class SlowCounts
{
    public static Polygon Polygon(IReadOnlyList<Engine.Shapes.Point> ring) =>
        new(new LinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]));

    /// <summary>Cells whose square lies nearer to the region than the border less 0.01 mm; with no border, whose square drawn in by 0.01 mm meets it.</summary>
    public static IEnumerable<Cell> Met(Polygon region, double border, Engine.Shapes.Point corner, double pitchX, double pitchY)
    {
        foreach (var cell in Cells(region.EnvelopeInternal, border, corner, pitchX, pitchY))
        {
            var drawnIn = border > 0 ? 0 : 0.01;
            var square = new Envelope(
                corner.X + (cell.Column * pitchX) + drawnIn, corner.X + ((cell.Column + 1) * pitchX) - drawnIn,
                corner.Y + (cell.Row * pitchY) + drawnIn, corner.Y + ((cell.Row + 1) * pitchY) - drawnIn);
            var geometry = region.Factory.ToGeometry(square);
            if (border > 0 ? region.Distance(geometry) < border - 0.01 : region.Intersects(geometry))
                yield return cell;
        }
    }

    /// <summary>Cells whose half-open square holds a point of a closed line or a further point: a walk along it from line to line of the grid.</summary>
    /// <remarks>The ring's coordinates and the grid are taken on whole thousandths, so that nothing is rounded but the crossings.</remarks>
    public static HashSet<Cell> Held(
        IReadOnlyList<Engine.Shapes.Point> ring, IReadOnlyList<Engine.Shapes.Point> points, Engine.Shapes.Point corner, double pitchX, double pitchY)
    {
        var held = new HashSet<Cell>(points.Concat(ring).Select(Owner));
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var stops = Crossings(a.X - corner.X, b.X - corner.X, pitchX).Concat(Crossings(a.Y - corner.Y, b.Y - corner.Y, pitchY)).Append(0).Append(1).Order().ToArray();
            foreach (var stop in stops)
                held.Add(Owner(a.Toward(b, stop)));
            foreach (var (first, second) in stops.Zip(stops.Skip(1)).Where(p => p.Second - p.First > 1e-12))
                held.Add(Owner(a.Toward(b, (first + second) / 2)));
        }

        return held;

        Cell Owner(Engine.Shapes.Point p) => new(Row(p.X - corner.X, pitchX), Row(p.Y - corner.Y, pitchY));

        static int Row(double past, double pitch) => (int)Math.Floor((past / pitch) + 1e-9);
    }

    private static IEnumerable<double> Crossings(double from, double to, double pitch)
    {
        for (var line = Math.Floor(Math.Min(from, to) / pitch); line <= Math.Ceiling(Math.Max(from, to) / pitch); line++)
        {
            var t = ((line * pitch) - from) / (to - from);
            if (t is > 0 and < 1)
                yield return t;
        }
    }

    private static IEnumerable<Cell> Cells(Envelope box, double border, Engine.Shapes.Point corner, double pitchX, double pitchY) =>
        from column in Enumerable.Range((int)Math.Floor((box.MinX - border - corner.X) / pitchX) - 1, (int)((box.Width + (2 * border)) / pitchX) + 4)
        from row in Enumerable.Range((int)Math.Floor((box.MinY - border - corner.Y) / pitchY) - 1, (int)((box.Height + (2 * border)) / pitchY) + 4)
        select new Cell(column, row);
}
