using System.Text.Json;

namespace BlockingTemplates.Web.Tests;

// Small project texts.
internal static class Pieces
{
    public static string Small(double wingspan = 40, string title = "Small") => FormattableString.Invariant(
        $$"""
        { "title": {{JsonSerializer.Serialize(title)}}, "units": "cm", // measured twice
          "piece": { "shape": "triangle", "finished": { "wingspan": {{wingspan}}, "depth": 20 },
                     "unblocked": { "sides": { "top": 35, "left": 25, "right": 25 } } } }
        """);

    public static string Broken { get; } =
        """
        { "units": "cm",
          "piece": { "shape": "triangle",
            "finished": { "wingspan": -40, "depht": 20 },
            "unblocked": { "sides": { "top": 35, "left": 2, "right": 2 } } },
          "mats": { "size": "1,24 m" } }
        """;
}
