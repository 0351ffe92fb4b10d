using System.Globalization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>fabric.swatch</c>.</summary>
internal static class SwatchReader
{
    private const string Names = "[along, across] the rows";

    /// <summary>The swatch, or null where there is none or after a problem.</summary>
    public static Swatch? Read(JsonPlace? place, FileReading reading)
    {
        var section = Section.Open<SwatchSection>(place, "the swatch", reading);
        if (!section.IsThere)
            return null;
        var before = Sides(section.Needed("before", "Write the swatch's size off the needles or hook, such as [10, 9.5].", reading), reading);
        var afterAt = section.Needed("after", "Write the swatch's size once dry and unpinned, such as [12.8, 11.4].", reading);
        var after = Sides(afterAt, reading);
        var pinnedAt = section["pinned"];
        var pinned = Sides(pinnedAt, reading);
        if (before is not { } b || after is not { } a)
            return null;
        var fits = Fits(afterAt!, b, a, reading) & (pinned is not { } p || Fits(pinnedAt!, b, p, reading));
        return fits ? new(b, a, pinned) : null;
    }

    private static (Length Along, Length Across)? Sides(JsonPlace? place, FileReading reading) =>
        reading.Pair(place, Limits.Swatch, Limits.Swatch, Names);

    private static bool Fits(JsonPlace place, (Length Along, Length Across) before, (Length Along, Length Across) other, FileReading reading)
    {
        var fits = true;
        (string Way, double Growth)[] ways =
            [("along", other.Along.Millimetres / before.Along.Millimetres), ("across", other.Across.Millimetres / before.Across.Millimetres)];
        foreach (var (way, growth) in ways.Where(w => reading.UnitIsKnown && w.Growth is < Limits.LeastSwatchGrowth or > Limits.MostSwatchGrowth))
        {
            fits = false;
            reading.Problem(
                place,
                string.Create(CultureInfo.InvariantCulture, $"Here the swatch is {growth:0.##} times as long {way} the rows as before blocking."),
                string.Create(CultureInfo.InvariantCulture, $"Check both sizes; from {Limits.LeastSwatchGrowth} to {Limits.MostSwatchGrowth} times is allowed."));
        }

        return fits;
    }
}
