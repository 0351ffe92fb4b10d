using System.Globalization;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Mats;

/// <summary>What the mat stage has to tell the maker.</summary>
internal static class MatNotes
{
    public static IReadOnlyList<Note> Of(MatLayout layout, MatSettings settings, LengthUnit units)
    {
        var findings = new Findings(units);
        var needed = layout.Mats.Count;
        AddFloor(layout, settings, findings);
        if (settings.Owned is { } have && have < needed)
        {
            var missing = needed - have;
            findings.Note(
                "mats.owned",
                Text($"{Mats(needed)} needed, {have} at hand: {missing} missing."),
                Text($"Find {Mats(missing)} more of the same size, or allow a narrower border."));
        }

        var near = layout.Seats.Where(s => s.NearSeam).ToArray();
        if (near.Length > 0)
        {
            findings.Note(
                "mats.seamClearance",
                $"{Marks([.. near.Select(s => s.Number)])} {(near.Length == 1 ? "stands" : "stand")} within the seam clearance, and no move by one stitch takes {(near.Length == 1 ? "it" : "them")} out.",
                "Tape the seam underneath there, and check that the pin holds.");
        }

        if (layout.CrossedSeams.Count > 0)
        {
            var seams = string.Join("; ", layout.CrossedSeams.Select(s => $"{s.First} to {s.Second} ({Marks(s.Marks).ToLowerInvariant()})"));
            findings.Note(
                "mats",
                $"Pulls near their marks cross {(layout.CrossedSeams.Count == 1 ? "a seam" : "seams")} and may open {(layout.CrossedSeams.Count == 1 ? "it" : "them")}: {seams}.",
                "Tape these seams underneath before pinning.");
        }

        return findings.Notes;
    }

    private static void AddFloor(MatLayout layout, MatSettings settings, Findings findings)
    {
        if (settings.Floor is not { } floor)
            return;
        double width = layout.Columns * layout.PitchX, height = layout.Rows * layout.PitchY;
        var (tooLong, tooWide) = floor.Excess(width, height);
        if ((tooLong, tooWide) is (0, 0))
            return;
        string[] over = [.. new[] { (By: tooLong, Word: "long"), (By: tooWide, Word: "wide") }.Where(o => o.By > 0).Select(o => $"{findings.Say(o.By)} too {o.Word}")];
        findings.Note(
            "mats.floor",
            $"No field of mats under this piece fits on a floor of {findings.Say(floor.Width.Millimetres)} by {findings.Say(floor.Height.Millimetres)}; the mats are planned without it and take {findings.Say(width)} by {findings.Say(height)}: {string.Join(" and ", over)}.",
            settings.Turns.Count == MatSettings.EveryDegree.Count
                ? "Find a larger floor, or allow a narrower border."
                : "Find a larger floor, allow a narrower border, or let the mats turn freely (\"turns\": \"free\").");
    }

    private static string Mats(int count) => count == 1 ? "1 mat" : Text($"{count} mats");

    private static string Marks(IReadOnlyList<int> numbers)
    {
        var list = string.Join(", ", numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)));
        return (numbers.Count == 1 ? "Mark " : "Marks ") + list;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
