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
            Spring(section["springBack"], reading))
        {
            Swatch = SwatchReader.Read(section["swatch"], reading),
            Strips = StripsReader.Read(section["strips"], reading),
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

    private static SpringBack Spring(JsonPlace? place, FileReading reading)
    {
        if (place?.Kind == JsonPlaceKind.Object)
        {
            var section = Section.Open<SpringBackSection>(place, "the spring-back", reading);
            return new(
                reading.Number(section["along"], Limits.LeastSpringBack, Limits.MostSpringBack) ?? 0,
                reading.Number(section["across"], Limits.LeastSpringBack, Limits.MostSpringBack) ?? 0);
        }

        if (place is not null and not { Kind: JsonPlaceKind.Blank or JsonPlaceKind.Number })
        {
            reading.WrongType<double>(place, "a fraction, or one along and one across the rows", "Write 0.03, or { \"along\": 0.03, \"across\": 0.04 }.");
            return default;
        }

        var both = reading.Number(place, Limits.LeastSpringBack, Limits.MostSpringBack) ?? 0;
        return new(both, both);
    }
}
