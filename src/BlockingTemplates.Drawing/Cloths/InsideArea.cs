using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>The inside of a ring, by level lines.</summary>
/// <param name="ring">Points once round, the first not repeated.</param>
internal sealed class InsideArea(IReadOnlyList<Point> ring)
{
    /// <summary>The box round it.</summary>
    public Box Box { get; } = Box.Around(ring);

    /// <summary>The parts of a level line that lie inside, from the left.</summary>
    public IReadOnlyList<(double From, double To)> At(double y)
    {
        List<double> crossings = [];
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y <= y != b.Y <= y)
                crossings.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
        }

        crossings.Sort();
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(k => (crossings[2 * k], crossings[(2 * k) + 1]))];
    }

    /// <summary>Whether a point lies inside.</summary>
    public bool Holds(Point p) => At(p.Y).Any(part => p.X >= part.From && p.X <= part.To);

    /// <summary>Whether a box lies inside, judged at its corners and its middle.</summary>
    public bool Holds(Box box) => new[] { new Point(box.Left, box.Lower), new(box.Right, box.Lower), new(box.Right, box.Upper), new(box.Left, box.Upper), box.Centre }.All(Holds);
}
