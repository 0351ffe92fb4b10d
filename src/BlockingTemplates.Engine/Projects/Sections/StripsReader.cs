using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>fabric.strips</c>.</summary>
internal static class StripsReader
{
    private static readonly Length UsualReading = Length.FromMillimetres(1);

    /// <summary>The strips, such as cloth can have, or null where there are none or after a problem.</summary>
    public static StripTest? Read(JsonPlace? place, FileReading reading)
    {
        var section = Section.Open<StripsSection>(place, "the strips", reading);
        if (!section.IsThere)
            return null;
        var width = reading.Length(section.Needed("width", "Write the width of each strip without the weight, such as 5.", reading), Limits.StripWidth);
        var grams = reading.Number(section.Needed("weight", "Write the weight in grams, clip and all, such as 50.", reading), Limits.LeastGrams, Limits.MostGrams);
        var tape = reading.Length(section["reading"], Limits.TapeReading) ?? UsualReading;
        var along = Strip(section, "along", widthNeeded: true, reading);
        var across = Strip(section, "across", widthNeeded: false, reading);
        var slanted = Strip(section, "slanted", widthNeeded: false, reading);
        if (width is not { } w || grams is not { } g || along is null || across is null || slanted is null || !reading.UnitIsKnown)
            return null;
        var strips = new StripTest(w, g, along, across, slanted, tape);
        var problems = StripProblems.Of(strips, reading.Unit);
        foreach (var problem in problems)
            reading.Problem(At(place!, problem.Path), problem.What, problem.Do);
        if (problems.Count > 0)
            return null;
        foreach (var note in StripProblems.Odd(strips, reading.Unit))
            reading.Note(At(place!, note.Place), note.What, note.Do);
        return strips;
    }

    private static PulledStrip? Strip(Section strips, string name, bool widthNeeded, FileReading reading)
    {
        var place = strips.Needed(name, $"Write the {name} strip's length without and with the weight.", reading);
        var section = Section.Open<StripSection>(place, $"the {name} strip", reading);
        if (!section.IsThere)
            return null;
        var lengths = reading.Pair(
            section.Needed("length", "Write its length without and with the weight, such as [20, 23.5].", reading), Limits.StripLength, Limits.StripLength, "[without, with] the weight");
        var widthAt = widthNeeded
            ? section.Needed("width", "Write its width half-way while the weight hangs on it.", reading)
            : section["width"];
        var width = reading.Length(widthAt, Limits.StripWidth);
        return lengths is var (before, pulled) && (width is not null || !widthNeeded) ? new(before, pulled, width) : null;
    }

    /// <summary>The place under another, as near as the file has it.</summary>
    private static JsonPlace At(JsonPlace place, string path)
    {
        foreach (var step in path.Split('.'))
            place = place.Member(step) ?? place;
        return place;
    }
}
