using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>mats</c>.</summary>
internal static class MatsReader
{
    /// <summary>The mats at hand and how they are used.</summary>
    public static MatSettings Read(JsonPlace? place, FileReading reading)
    {
        var usual = MatSettings.Default;
        var section = Section.Open<MatsSection>(place, "the mats", reading);
        var (width, height) = Pair(section["size"], Limits.Mat, reading) ?? (usual.Width, usual.Height);
        return new(
            width,
            height,
            reading.Length(section["border"], Limits.Border) ?? usual.Border,
            reading.Length(section["seamClearance"], Limits.SeamClearance) ?? usual.SeamClearance,
            Turns(section["turns"], reading) ?? usual.Turns,
            reading.Whole(section["owned"], 0, Limits.MostCounted),
            Pair(section["floor"], Limits.Floor, reading) is var (along, across) ? new MatFloor(along, across) : null);
    }

    private static (Length, Length)? Pair(JsonPlace? place, LengthRange range, FileReading reading) =>
        place?.Kind == JsonPlaceKind.List ? reading.Pair(place, range, range, "[width, height]")
        : reading.Length(place, range) is { } side ? (side, side)
        : null;

    private static IReadOnlyList<int>? Turns(JsonPlace? place, FileReading reading)
    {
        const string Do = "Write [0], [90] or [0, 90], or \"free\" for every degree.";
        if (place is { Kind: JsonPlaceKind.Text, Text: "free" })
            return MatSettings.EveryDegree;
        if (place is null or { Kind: JsonPlaceKind.Blank } || !reading.IsList(place, 2, "a list of turns in degrees", Do))
            return null;
        if (place.Items.Count == 0)
        {
            reading.Problem(place, "No turn of the mats is allowed here.", Do);
            return null;
        }

        var turns = new List<int>();
        foreach (var item in place.Items)
        {
            if (item is not { Kind: JsonPlaceKind.Number, Number: 0 or 90 })
                reading.WrongType<int>(item, "a turn of 0 or 90 degrees", Do);
            else if (turns.Contains((int)item.Number))
                reading.Problem(item, $"The turn {item.Words} is given twice.", Do);
            else
                turns.Add((int)item.Number);
        }

        return turns.Count > 0 ? turns : null;
    }
}
