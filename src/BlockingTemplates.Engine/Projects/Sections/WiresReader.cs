using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>wires</c> and <c>combs</c>.</summary>
internal static class WiresReader
{
    /// <summary>The wires at hand and how they are used.</summary>
    public static WireSettings Wires(JsonPlace? place, FileReading reading)
    {
        var usual = WireSettings.Default;
        var section = Section.Open<WiresSection>(place, "the wires", reading);
        var said = reading.Length(section["diameter"], Limits.WireDiameter);
        var kind = reading.Word<WireKind>(section["kind"]) ?? usual.Form.Kind;
        return new(
            Form(kind, said),
            Owned(section["owned"], kind, said, reading),
            reading.Length(section["overlap"], Limits.WireOverlap) ?? usual.Overlap,
            reading.Whole(section["every"], 1, Limits.MostSkipped) ?? usual.Every);
    }

    /// <summary>The combs at hand.</summary>
    public static CombSettings Combs(JsonPlace? place, FileReading reading)
    {
        var usual = CombSettings.Default;
        var section = Section.Open<CombsSection>(place, "the combs", reading);
        return new(
            reading.Whole(section["prongs"], Limits.FewestProngs, Limits.MostProngs) ?? usual.Prongs,
            reading.Length(section["length"], Limits.Comb) ?? usual.Length,
            reading.Whole(section["owned"], 0, Limits.MostCounted));
    }

    private static WireForm Form(WireKind kind, Length? diameter) =>
        new(kind, diameter ?? (kind == WireKind.Stiff ? WireForm.UsualStiff : WireForm.UsualFlexible));

    private static List<WireStock>? Owned(JsonPlace? place, WireKind kind, Length? diameter, FileReading reading)
    {
        const string Do = "Write [{ \"length\": 90, \"count\": 4 }].";
        if (place is null or { Kind: JsonPlaceKind.Blank } || !reading.IsList(place, Limits.MostStocks, "a list of wires by length", Do))
            return null;
        List<WireStock> owned = [];
        foreach (var item in place.Items)
        {
            if (reading.NotBlank(item, Do) is null)
                continue;
            var section = Section.Open<WireStockSection>(item, "wires of one length", reading);
            var length = reading.Length(section.Needed("length", "Write how long these wires are.", reading), Limits.Wire);
            var count = reading.Whole(section["count"], 0, Limits.MostCounted) ?? 1;
            var itsKind = reading.Word<WireKind>(section["kind"]);
            var itsDiameter = reading.Length(section["diameter"], Limits.WireDiameter);
            if (length is { } known)
                owned.Add(new(known, count, Form(itsKind ?? kind, itsDiameter ?? (itsKind is null || itsKind == kind ? diameter : null))));
        }

        return owned;
    }
}
