using System.Text.Json;

namespace BlockingTemplates.Cli.Tests;

// Small project texts.
internal static class Pieces
{
    public static string Small(string title = "Small", string more = "") =>
        $$"""
        { "title": {{JsonSerializer.Serialize(title)}}, "units": "cm",
          "piece": { "shape": "triangle", "finished": { "wingspan": 40, "depth": 20 },
                     "unblocked": { "sides": { "top": 35, "left": 25, "right": 25 } } }{{more}} }
        """;

    public static string Broken { get; } =
        """
        { "units": "cm",
          "piece": { "shape": "triangle",
            "finished": { "wingspan": -40, "depht": 20 },
            "unblocked": { "sides": { "top": 35, "left": 2, "right": 2 } } },
          "mats": { "size": "1,24 m" } }
        """;
}
