using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>A region of the cloth of which something is to be told, with its letter in the pictures.</summary>
/// <param name="Letter">One capital letter.</param>
/// <param name="Region">Where it is.</param>
/// <param name="IsBeyond">Whether it is stretched beyond what the swatch took; else it is slack.</param>
internal sealed record NamedRegion(string Letter, ClothRegion Region, bool IsBeyond)
{
    private const int MostOfAKind = 5;

    /// <summary>The largest regions of a cloth, slack ones first.</summary>
    public static IReadOnlyList<NamedRegion> Of(ClothPlan cloth) =>
        [.. cloth.Slack.Take(MostOfAKind).Select(r => (Region: r, IsBeyond: false)).Concat(cloth.Beyond.Take(MostOfAKind).Select(r => (Region: r, IsBeyond: true)))
            .Select((r, i) => new NamedRegion(((char)('A' + i)).ToString(), r.Region, r.IsBeyond))];

    /// <summary>What is the matter there, in words.</summary>
    public string Words(Plan plan, ClothPlan cloth)
    {
        var share = Math.Round(100.0 * Region.Cells.Count / cloth.Stretch.Cells.Count, MidpointRounding.AwayFromZero);
        var place = PlaceWords.Of(Region.Middle, plan.Pins.Pinned);
        var what = IsBeyond
            ? $"stretched further than your swatch took, up to {ToneScale.Percent(Region.Cells.Max(c => c.Along))} along and {ToneScale.Percent(Region.Cells.Max(c => c.Across))} across the rows"
            : "slack: too many stitches there, or too small a finished size";
        return string.Create(CultureInfo.InvariantCulture, $"{Letter}, {place} ({share} % of the piece): {what}.");
    }
}
