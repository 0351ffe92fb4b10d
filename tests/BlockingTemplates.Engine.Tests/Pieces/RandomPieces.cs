using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Tests.Pieces;

/// <summary>Finished measurements of every kind, in millimetres, the same for the same seed.</summary>
internal static class RandomPieces
{
    public static IEnumerable<string> Shapes => PieceKinds.All.Where(k => !k.GivenByCorners).Select(k => k.Shape);

    public static Dictionary<string, double> Sizes(string shape, Random random)
    {
        double Between(double least, double most) => least + ((most - least) * random.NextDouble());
        var wide = Between(100, 2000);
        switch (shape)
        {
            case "triangle":
                return new() { ["wingspan"] = wide, ["depth"] = Between(50, 1500), ["offset"] = Between(-wide, wide) };
            case "crescent":
                var rise = Between(-0.2, 0.4) * wide;
                return new() { ["wingspan"] = wide, ["rise"] = rise, ["depth"] = Between(12, (0.499 * wide) - Math.Max(rise, 0)) };
            case "semicircle":
                return new() { ["wingspan"] = wide };
            case "circle":
                return new() { ["diameter"] = wide };
            case "oval":
                return new() { ["width"] = wide, ["height"] = Between(100, 2000) };
            case "square":
                return new() { ["side"] = wide };
            case "rectangle":
                return new() { ["width"] = wide, ["length"] = Between(50, 2500) };
            case "parallelogram":
                return new() { ["width"] = wide, ["height"] = Between(50, 900), ["offset"] = Between(-wide, wide) };
            case "trapezoid":
                return new() { ["lowerWidth"] = wide, ["topWidth"] = Between(50, 2000), ["height"] = Between(50, 900), ["offset"] = Between(-300, 300) };
            case "kite":
                var depth = Between(100, 1500);
                return new() { ["wingspan"] = wide, ["depth"] = depth, ["peak"] = Between(0.05, 0.95) * depth };
            case "collar":
                var inner = Between(100, 900);
                var high = Between(20, 300);
                return new() { ["innerEdge"] = inner, ["depth"] = high, ["outerEdge"] = inner + (Between(0.1, 5.5) * high) };
            case "panel":
                var shoulders = Between(250, 600);
                return new()
                {
                    ["hem"] = Between(250, 900),
                    ["chest"] = shoulders + Between(-40, 200),
                    ["length"] = Between(400, 900),
                    ["armhole"] = Between(150, 280),
                    ["shoulders"] = shoulders,
                    ["shoulderSlope"] = Between(0, 60),
                    ["neckWidth"] = Between(0.3, 0.6) * shoulders,
                    ["neckDepth"] = Between(0, 150),
                };
            case "sleeve":
                return new() { ["cuff"] = Between(150, 500), ["upperArm"] = Between(250, 600), ["length"] = Between(80, 600), ["cap"] = Between(0, 200) };
            default:
                return random.Next(2) == 0 ? new() { ["side"] = wide / 4 } : new() { ["height"] = wide };
        }
    }

    public static Measurements Finished(Dictionary<string, double> sizes) => new() { Path = "piece.finished", Sizes = Lengths(sizes) };

    public static Dictionary<string, Length> Lengths(IReadOnlyDictionary<string, double> millimetres) =>
        millimetres.ToDictionary(s => s.Key, s => Length.FromMillimetres(s.Value));
}
