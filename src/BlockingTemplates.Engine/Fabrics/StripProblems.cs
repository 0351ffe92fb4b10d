using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Finds what is impossible or odd in three strips.</summary>
public static class StripProblems
{
    /// <summary>How many times the error of a reading a strip should stretch at least, to be told well: a rule of thumb, no source.</summary>
    private const double GoodReadings = 10;

    /// <summary>All problems; none where a cloth can have such strips. Paths stand under the strips' own.</summary>
    /// <param name="strips">The strips.</param>
    /// <param name="units">The units the maker reads.</param>
    public static IReadOnlyList<Problem> Of(StripTest strips, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(strips);
        List<Problem> found = [.. Each(strips).SelectMany(s => Stretched(s.Name, s.Strip, strips.Reading, units))];
        return found.Count > 0 ? found : [.. Together(strips)];
    }

    /// <summary>What should be known of strips that are possible. Places stand under the strips' own.</summary>
    /// <param name="strips">The strips.</param>
    /// <param name="units">The units the maker reads.</param>
    public static IReadOnlyList<Note> Odd(StripTest strips, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(strips);
        List<Note> found = [];
        foreach (var (name, strip) in Each(strips))
        {
            var longer = strip.Pulled.Millimetres - strip.Before.Millimetres;
            if (longer < GoodReadings * strips.Reading.Millimetres)
            {
                found.Add(new(
                    $"{name}.length",
                    $"The {name} strip got only {Say(longer, units)} longer, little beside a reading that may be off by {Say(strips.Reading.Millimetres, units)}.",
                    "Take a heavier weight or longer strips for a narrower range."));
            }

            if (strip.WidthPulled > strips.Width)
            {
                found.Add(new(
                    $"{name}.width",
                    $"The {name} strip got wider while it was pulled, from {Say(strips.Width.Millimetres, units)} to {Say(strip.WidthPulled.Value.Millimetres, units)}.",
                    "Measure it again half-way between the ends; uncurl its edges first."));
            }
        }

        if (new StripStrains(strips).Reciprocity() is var (one, other, off) && Math.Abs(one - other) > off)
        {
            found.Add(new(
                "across.width",
                "The narrowing of the strip along and that of the strip across do not go together as those of one cloth do; their mean is used.",
                "Measure both widths again, half-way between the ends."));
        }

        return found;
    }

    private static (string Name, PulledStrip Strip)[] Each(StripTest strips) =>
        [("along", strips.Along), ("across", strips.Across), ("slanted", strips.Slanted)];

    private static IEnumerable<Problem> Stretched(string name, PulledStrip strip, Length reading, LengthUnit units)
    {
        var longer = strip.Pulled.Millimetres - strip.Before.Millimetres;
        if (!(longer > 0))
        {
            yield return new(
                $"{name}.length",
                longer < 0
                    ? $"The {name} strip got {Say(-longer, units)} shorter by hanging a weight on it."
                    : $"The {name} strip is no longer with the weight than without.",
                "Write the length without the weight first, then the one with it; measure again between the same two marks.");
        }
        else if (longer <= 2 * reading.Millimetres)
        {
            yield return new(
                $"{name}.length",
                $"The {name} strip got only {Say(longer, units)} longer; with readings that may be off by {Say(reading.Millimetres, units)} each that may be nothing.",
                "Take a heavier weight or longer strips, or write how closely you can read the tape as \"reading\".");
        }
    }

    private static IEnumerable<Problem> Together(StripTest strips)
    {
        var strains = new StripStrains(strips);
        if (strains.Cloth(0, 0, 0, 0) is { } cloth && ClothRatios.Of(cloth).ShearShare <= ClothMaterials.MostShearShare)
            yield break;
        var (a1, a2) = (strains.Give(strips.Along, 0), strains.Give(strips.Across, 0));
        var narrowing = strains.Reciprocity() is var (one, other, _) ? (one + other) / 2 : strains.Narrowing(strips.Along, 0, 0);
        yield return narrowing * narrowing >= a1 * a2
            ? new(
                "along.width",
                narrowing > 0
                    ? "The strips narrow by more than any cloth can beside so little lengthening."
                    : "The strips get wider by more than any cloth can beside so little lengthening.",
                "Measure the width again half-way between the ends, with the edges uncurled; check the width without the weight.")
            : new(
                "slanted.length",
                "The slanted strip stretches less than any cloth can whose strips along and across stretch as these do.",
                "Measure it again; check that it is cut at 45 degrees, as wide as the others, and carries the same weight.");
    }

    private static string Say(double millimetres, LengthUnit units) => LengthWords.Of(Length.FromMillimetres(millimetres), units);
}
