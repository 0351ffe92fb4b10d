using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>Boxes and leaders already drawn, to keep new ones off them.</summary>
public sealed class TakenPlaces
{
    private const double CellMm = 40;
    private readonly Dictionary<(int X, int Y), List<Box>> _boxes = [];
    private readonly Dictionary<(int X, int Y), List<(Point A, Point B)>> _leaders = [];

    /// <summary>Takes a box.</summary>
    public void Add(Box box) => Put(_boxes, box, box);

    /// <summary>Takes a straight leader.</summary>
    public void AddLeader(Point from, Point to) => Put(_leaders, Box.Around([from, to]), (from, to));

    /// <summary>Whether a box overlaps no box and no leader taken before.</summary>
    public bool IsFree(Box box) =>
        Near(_boxes, box).All(b => !b.Overlaps(box)) && Near(_leaders, box).All(l => !SegmentBox.Meets(l.A, l.B, box));

    /// <summary>Whether a leader crosses no box and no leader taken before.</summary>
    public bool IsFreeForLeader(Point from, Point to)
    {
        var about = Box.Around([from, to]);
        return Near(_boxes, about).All(b => !SegmentBox.Meets(from, to, b.Grown(-0.2))) && Near(_leaders, about).All(l => !Crosses(l.A, l.B, from, to));
    }

    private static bool Crosses(Point a, Point b, Point c, Point d) =>
        (b - a).Cross(c - a) * (b - a).Cross(d - a) < 0 && (d - c).Cross(a - c) * (d - c).Cross(b - c) < 0;

    private static void Put<T>(Dictionary<(int X, int Y), List<T>> grid, Box about, T item)
    {
        foreach (var cell in Cells(about))
        {
            if (!grid.TryGetValue(cell, out var list))
                grid[cell] = list = [];
            list.Add(item);
        }
    }

    private static IEnumerable<T> Near<T>(Dictionary<(int X, int Y), List<T>> grid, Box about) =>
        Cells(about).SelectMany(c => grid.TryGetValue(c, out var list) ? list : []);

    private static IEnumerable<(int X, int Y)> Cells(Box box)
    {
        for (var x = (int)Math.Floor(box.Left / CellMm); x <= (int)Math.Floor(box.Right / CellMm); x++)
        {
            for (var y = (int)Math.Floor(box.Lower / CellMm); y <= (int)Math.Floor(box.Upper / CellMm); y++)
                yield return (x, y);
        }
    }
}
