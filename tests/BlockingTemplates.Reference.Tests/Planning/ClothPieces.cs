namespace BlockingTemplates.Reference.Tests.Planning;

// Pieces whose cloth is computed in the tests of what is shown of it.
internal static class ClothPieces
{
    // A square that grew: its finished size is smaller than the piece as it lies, so most of it stays slack.
    public const string Slack = "slack square";

    public const string SlackText = """
        { "format": 1, "title": "Wall hanging that grew (invented example)", "units": "in",
          "piece": { "shape": "square",
            "finished":  { "side": 20 },
            "unblocked": { "sides": { "lower": 19.5, "right": 22, "top": 22, "left": 19.5 }, "diagonal": { "from": "lower left", "to": "upper right", "length": 30 } } },
          "fabric": { "kind": "plain", "fibre": "cotton", "stitch": ["1/4 in", "1/4 in"], "swatch": null },
          "sheets": { "paper": "Letter" } }
        """;

    public static string[] All { get; } = [Planned.Triangle, "sweater-front", Planned.Rectangle, Slack];
}
