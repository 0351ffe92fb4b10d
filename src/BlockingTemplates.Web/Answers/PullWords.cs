using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Web.Answers;

/// <summary>Which way to pull, in words for one who stands at the lower side of the mats.</summary>
internal static class PullWords
{
    private static readonly string[] Ways =
    [
        "to the right", "to the right and away from you", "away from you", "to the left and away from you",
        "to the left", "to the left and toward you", "toward you", "to the right and toward you",
    ];

    /// <summary>The nearest of eight directions.</summary>
    public static string Direction(Vector pull)
    {
        var eighth = (int)Math.Round(Math.Atan2(pull.Y, pull.X) / (Math.PI / 4), MidpointRounding.AwayFromZero);
        return Ways[(eighth + Ways.Length) % Ways.Length];
    }
}
