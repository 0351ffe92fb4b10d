using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>sheets</c>.</summary>
internal sealed class SheetsReader(Func<string, Paper?> paper, IReadOnlyList<string> paperNames, FileReading reading)
{
    private const string UsualPaper = "A4";

    /// <summary>How the guide is printed.</summary>
    public SheetSettings Read(JsonPlace? place)
    {
        var section = Section.Open<SheetsSection>(place, "the sheets", reading);
        return new SheetSettings(
            Papers(section["paper"]) ?? [paper(UsualPaper) ?? throw new InvalidOperationException($"The catalogue of papers has no {UsualPaper}.")],
            reading.Length(section["margin"], Limits.Margin) ?? Length.FromCentimetres(1.2),
            reading.Length(section["overlap"], Limits.Margin) ?? Length.FromCentimetres(1.5),
            reading.Word<GuideUse>(section["use"]) ?? GuideUse.Prick,
            reading.Pair(section["measured"], Limits.Bar, Limits.Bar, "[short, long]"))
        {
            Half = reading.YesNo(section["half"]) ?? false,
            All = reading.YesNo(section["all"]) ?? false,
        };
    }

    private List<Paper>? Papers(JsonPlace? place)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (place.Kind == JsonPlaceKind.Text)
            return Named(place) is { } one ? [one] : null;
        if (!reading.IsList(place, Limits.MostPapers, "a paper's name, or a list of them", "Write \"A4\", or [\"A4\", \"Letter\"]."))
            return null;
        if (place.Items.Count == 0)
            reading.Problem(place, "No paper is named here.", "Write \"A4\", or [\"A4\", \"Letter\"].");
        var papers = new List<Paper>();
        foreach (var item in place.Items)
        {
            if (reading.NotBlank(item, "Write a paper's name.") is null || Named(item) is not { } named)
                continue;
            if (papers.Contains(named))
                reading.Problem(item, $"{item.Words} is named twice.", "Name each paper once.");
            else
                papers.Add(named);
        }

        return papers.Count > 0 ? papers : null;
    }

    private Paper? Named(JsonPlace place)
    {
        if (reading.Text(place, Limits.LongestName) is not { } name)
            return null;
        if (paper(name) is { } known)
            return known;
        reading.Problem(
            place,
            $"{place.Words} is no paper known here.",
            NearestName.Of(name, paperNames) is { } near ? $"Did you mean \"{near}\"?" : $"Write one of {Values.Listed(paperNames)}.");
        return null;
    }
}
