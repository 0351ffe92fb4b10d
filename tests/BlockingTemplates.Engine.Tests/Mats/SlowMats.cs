using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Tests.Shapes;

namespace BlockingTemplates.Engine.Tests.Mats;

/// <summary>The mat stage's choice the slow and obvious way: every turn and shift is laid out and compared.</summary>
internal static class SlowMats
{
    public sealed record Choice(int Mats, int Near, int BoxSize, int Turn, int X, int Y, Point Corner, HashSet<Cell> Cells);

    public static Choice? Best(IReadOnlyList<Point> ring, IReadOnlyList<Point> marks, MatSettings settings)
    {
        var all = new List<Choice>();
        var border = settings.Border.Millimetres;
        foreach (var turn in settings.Turns)
        {
            var quarters = Enumerable.Range(0, 3).MinBy(q => Math.Abs((90 * q) - turn));
            var (w, h) = quarters % 2 == 0
                ? (settings.Width.Millimetres, settings.Height.Millimetres)
                : (settings.Height.Millimetres, settings.Width.Millimetres);
            var back = Affine.Turn(((90 * quarters) - turn) * Math.PI / 180);
            Point[] turnedMarks = [.. marks.Select(back.Map)];
            Point[] turnedRing = [.. ring.Select(back.Map)];
            var box = Box.Around(turnedRing).Grown(border);
            var region = SlowCounts.Polygon(turnedRing);
            for (var x = 0; x < w; x++)
            {
                for (var y = 0; y < h; y++)
                {
                    var origin = new Point(box.Left + x, box.Lower + y);
                    var cells = SlowCounts.Met(region, border, origin, w, h).ToArray();
                    var (column, row) = (cells.Min(c => c.Column), cells.Min(c => c.Row));
                    var corner = origin + new Vector(column * w, row * h);
                    HashSet<Cell> moved = [.. cells.Select(c => new Cell(c.Column - column, c.Row - row))];
                    var near = turnedMarks.Count(m => SeamDistance(m, moved, corner, w, h) < settings.SeamClearance.Millimetres - 1e-6);
                    var (columns, rows) = (moved.Max(c => c.Column) + 1, moved.Max(c => c.Row) + 1);
                    var size = columns * rows;
                    if (settings.Floor is { } floor && !Fits(columns * w, rows * h, floor.Width.Millimetres, floor.Height.Millimetres) && !Fits(columns * w, rows * h, floor.Height.Millimetres, floor.Width.Millimetres))
                        continue;
                    all.Add(new(cells.Length, near, size, turn, x, y, corner, moved));
                }
            }
        }

        return all.OrderBy(c => c.Mats).ThenBy(c => c.Near).ThenBy(c => c.BoxSize).ThenBy(c => c.Turn).ThenBy(c => c.X).ThenBy(c => c.Y).FirstOrDefault();

        static bool Fits(double width, double height, double across, double up) => width <= across + 1e-6 && height <= up + 1e-6;
    }

    /// <summary>Distance to the nearest of all seams, each as a segment.</summary>
    public static double SeamDistance(Point mark, IReadOnlySet<Cell> cells, Point corner, double w, double h)
    {
        var nearest = double.PositiveInfinity;
        foreach (var cell in cells)
        {
            var upperRight = new NetTopologySuite.Geometries.Coordinate(corner.X + ((cell.Column + 1) * w), corner.Y + ((cell.Row + 1) * h));
            var (left, lower) = (upperRight.X - w, upperRight.Y - h);
            var p = new NetTopologySuite.Geometries.Coordinate(mark.X, mark.Y);
            if (cells.Contains(cell with { Column = cell.Column + 1 }))
                nearest = Math.Min(nearest, new NetTopologySuite.Geometries.LineSegment(new(upperRight.X, lower), upperRight).Distance(p));
            if (cells.Contains(cell with { Row = cell.Row + 1 }))
                nearest = Math.Min(nearest, new NetTopologySuite.Geometries.LineSegment(new(left, upperRight.Y), upperRight).Distance(p));
        }

        return nearest;
    }
}
