using System.Globalization;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>How hard the cloth pulls at each pin: bars that stand outward on the outline, the longest for the largest load.</summary>
internal static class LoadPicture
{
    /// <summary>Length of the bar of the largest load, in millimetres.</summary>
    public const double LongestMm = 8;

    private const double FlatMm = 0.5;
    private const double NumberMm = 2.8;
    private const double RoomMm = LongestMm + 4.5;
    private const double LeastMm = 0.3;
    private const int MostNumbers = 10;

    /// <summary>The line of a bar.</summary>
    public static Stroke Bar { get; } = new(0.8, 0.15);

    public static IEnumerable<Element> Draw(Plan plan, ClothPlan cloth, Box box)
    {
        var placing = FramePlacing.Fit(Box.Around(plan.Pins.Pinned.Ring(FlatMm)), box.Grown(-RoomMm));
        yield return new PathElement(PathSteps.Polyline(plan.Pins.Pinned.Ring(FlatMm).Select(placing.On), true), new(0.3, 0.3), new Fill(0.95));
        var taken = new TakenPlaces();
        foreach (var mark in plan.Pins.Marks)
        {
            var (foot, tip) = (placing.On(mark.At), placing.On(mark.At) + (Math.Max(LeastMm, LongestMm * cloth.LoadShares[mark.Number - 1]) * mark.Outward));
            taken.AddLeader(foot, tip);
            yield return new PathElement(PathSteps.Line(foot, tip), Bar);
        }

        // Numbers of the heaviest, beyond their bars.
        foreach (var mark in plan.Pins.Marks.OrderByDescending(m => cloth.LoadShares[m.Number - 1]).ThenBy(m => m.Number).Take(MostNumbers))
        {
            var text = mark.Number.ToString(CultureInfo.InvariantCulture);
            double width = TextMeasure.AdvanceMm(text, NumberMm, FontWeight.Bold), height = NumberMm * TextMeasure.FigureHeight(FontWeight.Bold);
            var n = mark.Outward;
            var far = (LongestMm * cloth.LoadShares[mark.Number - 1]) + 1.2 + (Math.Abs(n.X) * width / 2) + (Math.Abs(n.Y) * height / 2);
            var place = Box.About(placing.On(mark.At) + (far * n), width, height);
            if (!taken.IsFree(place.Grown(0.4)))
                continue;
            taken.Add(place);
            yield return new TextElement(text, new(place.Left, place.Lower), NumberMm, FontWeight.Bold);
        }
    }
}
