using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>fabric</c> and <c>set</c>.</summary>
internal static class FabricReader
{
    /// <summary>What is said of the cloth.</summary>
    public static FabricSettings Fabric(JsonPlace? place, FileReading reading)
    {
        var section = Section.Open<FabricSection>(place, "the fabric", reading);
        return new(
            reading.Word<FabricKind>(section["kind"]),
            Fibre(section["fibre"], reading),
            reading.Number(section["grain"], -Limits.MostGrain, Limits.MostGrain) ?? 0,
            reading.Pair(section["stitch"], Limits.Stitch, Limits.Stitch, "[along, across] the rows"),
            reading.Word<Dampness>(section["measured"]),
            Pair(section["springBack"], "the spring-back", Limits.LeastSpringBack, Limits.MostSpringBack, "0.03", reading) is var (along, across) ? new(along, across) : default)
        {
            Swatch = SwatchReader.Read(section["swatch"], reading),
            Strips = StripsReader.Read(section["strips"], reading),
            WetChange = Pair(section["wetChange"], "the change when wet", Limits.LeastWetChange, Limits.MostWetChange, "-0.05", reading) is var (wetAlong, wetAcross) ? new(wetAlong, wetAcross) : null,
        };
    }

    /// <summary>How the shape is set.</summary>
    public static SetSettings Set(JsonPlace? place, FileReading reading)
    {
        var section = Section.Open<SetSection>(place, "how the shape is set", reading);
        return new(reading.Word<SetMethod>(section["method"]), reading.Word<CareLabel>(section["label"]));
    }

    private static Fibre? Fibre(JsonPlace? place, FileReading reading)
    {
        if (reading.Text(place, Limits.LongestName) is not { Length: > 0 } name)
            return null;
        if (FibreCatalogue.Find(name) is { } known)
            return known;
        reading.Note(
            place!,
            $"The fibre {place!.Words} is not in the catalogue; the cautions are those for the most delicate one.",
            FibreCatalogue.Nearest(name) is { } near
                ? $"Did you mean \"{near}\"?"
                : $"If one of these comes near it, write that: {Values.Listed([.. FibreCatalogue.All.Select(f => f.Name)])}.");
        return FibreCatalogue.MostDelicate(name);
    }

    /// <summary>A fraction for both directions, or one along and one across the rows; null where there is none.</summary>
    private static (double Along, double Across)? Pair(JsonPlace? place, string what, double least, double most, string example, FileReading reading)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (place.Kind == JsonPlaceKind.Object)
        {
            // The records of the two changes have the same names.
            var section = Section.Open<SpringBackSection>(place, what, reading);
            var (along, across) = (reading.Number(section["along"], least, most), reading.Number(section["across"], least, most));
            return along is null && across is null ? null : (along ?? 0, across ?? 0);
        }

        if (place.Kind != JsonPlaceKind.Number)
            return reading.WrongType<(double, double)>(place, "a fraction, or one along and one across the rows", $"Write {example}, or {{ \"along\": {example}, \"across\": 0.04 }}.");
        return reading.Number(place, least, most) is { } both ? (both, both) : null;
    }
}
