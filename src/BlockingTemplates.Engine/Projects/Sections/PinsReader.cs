using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>pins</c>.</summary>
internal static class PinsReader
{
    /// <summary>How the edge is pinned.</summary>
    public static PinSettings Read(JsonPlace? place, PieceAsRead? piece, FileReading reading)
    {
        var usual = PinSettings.Default;
        var section = Section.Open<PinsSection>(place, "the pins", reading);
        var mostAt = section["maxSpacing"];
        var settings = new PinSettings(
            reading.Length(section["scallop"], Limits.Scallop) ?? usual.Scallop,
            reading.Length(section["spacing"], Limits.Spacing),
            reading.Length(section["minSpacing"], Limits.Spacing) ?? usual.MinSpacing,
            mostAt is { Kind: JsonPlaceKind.Blank } ? null : reading.Length(mostAt, Limits.Spacing) ?? usual.MaxSpacing,
            Anchor(section["anchor"], piece, reading),
            reading.Whole(section["owned"], 0, Limits.MostCounted));
        if (reading.UnitIsKnown)
            CheckOrder(section, settings, reading);
        return settings;
    }

    private static void CheckOrder(Section section, PinSettings settings, FileReading reading)
    {
        if (settings.MaxSpacing is { } most && settings.MinSpacing > most)
        {
            reading.Problem(
                section["minSpacing"] ?? section["maxSpacing"]!,
                $"minSpacing, {Said(settings.MinSpacing)}, is more than maxSpacing, {Said(most)}.",
                "Lower the one, raise the other, or write null for maxSpacing.");
        }

        if (settings.Spacing is { } spacing && (spacing < settings.MinSpacing || spacing > settings.MaxSpacing))
        {
            reading.Problem(
                section["spacing"]!,
                $"spacing, {Said(spacing)}, is {(spacing < settings.MinSpacing ? $"less than minSpacing, {Said(settings.MinSpacing)}" : $"more than maxSpacing, {Said(settings.MaxSpacing!.Value)}")}.",
                "Change one of them, so that it lies between; minSpacing is 1.5 cm and maxSpacing 8 cm unless said.");
        }

        string Said(Length length) => LengthWords.Of(length, reading.Unit);
    }

    private static string? Anchor(JsonPlace? place, PieceAsRead? piece, FileReading reading)
    {
        if (reading.Text(place, Limits.LongestName * 2) is not { } text)
            return null;
        if (piece?.CornerNames is null || piece.EdgeNames is null)
            return text;
        string[] known = [.. piece.CornerNames, .. piece.EdgeNames, .. piece.EdgeNames.Select(e => PinSettings.MiddleOf + e), PinSettings.NoAnchor];
        if (known.FirstOrDefault(k => k.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } anchor)
            return anchor;
        reading.Problem(
            place!,
            $"{place!.Words} is no corner and no edge of this piece.",
            NearestName.Of(text, known) is { } near
                ? $"Did you mean \"{near}\"?"
                : $"Write a corner or an edge ({Values.Listed([.. known.Take(piece.CornerNames.Count + piece.EdgeNames.Count).Take(20)])}), \"middle of EDGE\", or \"none\".");
        return null;
    }
}
