using BlockingTemplates.Engine;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>How mats and piece are turned against each other, in words.</summary>
public static class TurnWords
{
    /// <summary>Words such as "mats turned by a quarter" or "piece turned on them by 30 degrees clockwise"; null where neither is turned.</summary>
    public static string? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var turn = plan.Mats.PieceTurnDegrees;
        return turn != 0
            ? FormattableString.Invariant($"piece turned on them by {Math.Abs(turn)} {(Math.Abs(turn) == 1 ? "degree" : "degrees")} {(turn < 0 ? "clockwise" : "counter-clockwise")}")
            : plan.Mats.TurnDegrees == 0 ? null : "mats turned by a quarter";
    }
}
