using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

/// <summary>Rings that do not cross themselves, counter-clockwise, the same for the same seed.</summary>
internal static class RandomRings
{
    public static IReadOnlyList<Point> Of(int seed, double size)
    {
        var random = new Random(seed);
        return (seed % 6) switch
        {
            0 => Triangle(random, size),
            1 => Crescent(random, size),
            2 => Star(random, size),
            3 => Comb(random, size),
            4 => Rectangle(random, size),
            _ => Spiral(random, size),
        };
    }

    public static IReadOnlyList<Point> Rectangle(double width, double height, double left = 0, double lower = 0) =>
        [new(left, lower), new(left + width, lower), new(left + width, lower + height), new(left, lower + height)];

    private static Point[] Triangle(Random random, double size) =>
        [new(size * random.NextDouble(), 0), new(size, size * (0.3 + random.NextDouble())), new(0, size * (0.3 + random.NextDouble()))];

    private static Point[] Crescent(Random random, double size)
    {
        var inner = 0.2 + (0.6 * random.NextDouble());
        var turn = Affine.Turn(random.NextDouble() * 6);
        var outer = Enumerable.Range(0, 20).Select(i => Point.Origin + (size / 2 * Vector.AtAngle(Math.PI * (1 + (i / 20.0)))));
        var back = Enumerable.Range(0, 20).Select(i => Vector.AtAngle(-Math.PI * i / 20.0)).Select(v => new Point(size / 2 * v.X, size / 2 * inner * v.Y));
        return [.. outer.Concat(back).Select(turn.Map)];
    }

    private static Point[] Star(Random random, double size) =>
        [.. Enumerable.Range(0, 17).Select(i => Point.Origin + (size * (0.1 + (0.4 * random.NextDouble())) * Vector.AtAngle(i * Math.Tau / 17)))];

    /// <summary>Teeth along the upper side, some standing askew: many upright pieces.</summary>
    private static Point[] Comb(Random random, double size)
    {
        var teeth = Enumerable.Range(0, 9).Select(i => new Point(
            size * (1 - (i / 8.0)) + (i is 0 or 8 ? 0 : size * 0.05 * random.NextDouble()),
            size * (i % 2 == 0 ? 0.9 * random.NextDouble() + 0.1 : 0.05)));
        var turn = Affine.Turn(random.Next(4) * Math.PI / 2);
        Point[] ring = [new(0, 0), new(size, 0), .. teeth];
        return [.. ring.Select(turn.Map)];
    }

    private static Point[] Rectangle(Random random, double size)
    {
        var turn = Affine.Turn(random.Next(3) * Math.PI / 8);
        return [.. Rectangle(size * (0.2 + random.NextDouble()), size * (0.2 + random.NextDouble())).Select(turn.Map)];
    }

    /// <summary>A curled band that nearly closes on itself, so that a border closes the gap.</summary>
    private static Point[] Spiral(Random random, double size)
    {
        var (start, sweep) = (6 * random.NextDouble(), 4.5 + (1.5 * random.NextDouble()));
        var outer = Enumerable.Range(0, 25).Select(i => Point.Origin + (size * 0.5 * Vector.AtAngle(start + (sweep * i / 24))));
        var inner = Enumerable.Range(0, 25).Select(i => Point.Origin + (size * 0.38 * Vector.AtAngle(start + (sweep * (24 - i) / 24))));
        return [.. outer.Concat(inner)];
    }
}
