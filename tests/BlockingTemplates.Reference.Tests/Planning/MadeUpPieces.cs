using System.Globalization;
using System.Text;

namespace BlockingTemplates.Reference.Tests.Planning;

// Seeded random project texts: triangles, rectangles and outlines, with and without unblocked measurements.
internal static class MadeUpPieces
{
    public static string Text(Random random, string paper, string use, bool counted = true)
    {
        var kind = random.Next(3);
        var piece = kind switch { 0 => Triangle(random), 1 => Rectangle(random), _ => Outline(random) };
        var edges = !counted ? "" : kind switch
        {
            0 => $$""", "edges": { "top": { "count": {{random.Next(60, 300)}}, "of": "stitches" } }""",
            1 => $$""", "edges": { "lower": { "count": {{random.Next(40, 200)}}, "of": "stitches" }, "left": { "count": {{random.Next(60, 300)}}, "of": "rows" } }""",
            _ => "",
        };
        var spacing = random.Next(2) == 0 ? "" : $", \"spacing\": {random.Next(25, 80)}";
        return $$"""
            { "format": 1, "title": "Made-up piece {{random.Next(1000)}}", "units": "mm",
              "piece": { {{piece}}{{edges}} },
              "fabric": { "springBack": {{Of(random.Next(0, 40) / 1000.0)}} },
              "pins": { "scallop": 5{{spacing}} },
              "sheets": { "paper": "{{paper}}", "use": "{{use}}" },
              "notes": "{{(random.Next(2) == 0 ? "" : "Brush it up once it has dried, and keep the swatch.")}}" }
            """;
    }

    private static string Triangle(Random random)
    {
        double wingspan = random.Next(500, 1900), depth = Math.Round(wingspan * Between(random, 0.35, 0.75)), shrunk = Between(random, 0.78, 0.95);
        var side = Math.Sqrt((wingspan * wingspan / 4) + (depth * depth));
        var bow = random.Next(-20, 50);
        var unblocked = random.Next(4) == 0 ? "" : $$"""
            , "unblocked": { "sides": { "top": {{Of(wingspan * shrunk)}}, "left": {{Of(side * shrunk * 1.01)}}, "right": {{Of(side * shrunk * 0.99)}} },
                             "bows": { "left": {{bow}}, "right": {{bow + 3}}, "top": {{-random.Next(0, 30)}} } }
            """;
        return $$""" "shape": "triangle", "evenOut": {{(random.Next(2) == 0 ? "true" : "false")}}, "finished": { "wingspan": {{Of(wingspan)}}, "depth": {{Of(depth)}} }{{unblocked}} """;
    }

    private static string Rectangle(Random random)
    {
        double width = random.Next(150, 900), length = random.Next(300, 1800), shrunk = Between(random, 0.8, 0.97);
        double w = width * shrunk, l = length * shrunk;
        var unblocked = random.Next(4) == 0 ? "" : $$"""
            , "unblocked": { "sides": { "lower": {{Of(w)}}, "right": {{Of(l)}}, "top": {{Of(w * 1.02)}}, "left": {{Of(l * 0.995)}} },
                             "diagonal": { "from": "lower left", "to": "upper right", "length": {{Of(Math.Sqrt((w * w) + (l * l)))}} },
                             "bows": { "right": {{random.Next(-8, 12)}}, "top": {{random.Next(-8, 8)}} } }
            """;
        return $$""" "shape": "rectangle", "finished": { "width": {{Of(width)}}, "length": {{Of(length)}} }{{unblocked}} """;
    }

    // A star-shaped ring of 4 to 7 corners round a middle, with bows, and its smaller unblocked self.
    private static string Outline(Random random)
    {
        var corners = random.Next(4, 8);
        double across = random.Next(250, 700), up = random.Next(200, 600);
        var ring = Enumerable.Range(0, corners)
            .Select(i => (Angle: 2 * Math.PI * (i + Between(random, -0.2, 0.2)) / corners, Far: Between(random, 0.75, 1)))
            .Select(c => (X: across * c.Far * Math.Cos(c.Angle), Y: up * c.Far * Math.Sin(c.Angle))).ToList();
        var bows = ring.Select(_ => random.Next(-15, 30)).ToList();
        string Ring(double scale)
        {
            var text = new StringBuilder("{ \"corners\": [");
            text.AppendJoin(", ", ring.Select(c => $"[{Of(scale * c.X)}, {Of(scale * c.Y)}]"));
            text.Append("], \"edges\": [").AppendJoin(", ", bows.Select((b, i) => $"{{ \"name\": \"side {(char)('a' + i)}\", \"bow\": {Of(scale * b)} }}"));
            return text.Append("] }").ToString();
        }

        return $$""" "shape": "outline", "finished": {{Ring(1)}}{{(random.Next(4) == 0 ? "" : $", \"unblocked\": {Ring(Between(random, 0.8, 0.95))}")}} """;
    }

    private static double Between(Random random, double from, double to) => from + ((to - from) * random.NextDouble());

    private static string Of(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
