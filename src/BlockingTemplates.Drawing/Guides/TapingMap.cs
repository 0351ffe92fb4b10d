using System.Globalization;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>How the sheets lie together, in which order they are taped, and what to measure on the taped guide.</summary>
internal static class TapingMap
{
    private const double MostPictureMm = 140;
    private const int MostCornersInPairs = 4;
    private const int MostOfMany = 6;

    public static IReadOnlyList<Page> Draw(Plan plan, Guide guide, Paper reading)
    {
        var flow = new PageFlow(reading.Short.Millimetres, reading.Long.Millimetres, "taping", "Taping map");
        var layout = guide.Layout;
        flow.Paragraph("Taping map", TextStyle.Title);
        flow.Paragraph($"{layout.Sheets.Count} sheets of {guide.Paper.Name}, {(layout.Landscape ? "long side across" : "upright")}. Names: row from the lower side, then column from the left; gaps are counted.", TextStyle.Body);
        flow.Gap(2);
        var extent = Box.Around(layout.Sheets.SelectMany(s => new Point[] { new(s.Window.Left, s.Window.Lower), new(s.Window.Right, s.Window.Upper) }));
        var box = flow.Take(Math.Min(MostPictureMm, flow.Column.Width * extent.Height / extent.Width));
        flow.Draw(Picture(plan, layout, FramePlacing.Fit(extent, box)));
        flow.Heading("Tape in this order");
        flow.Point("Start with the lowest row, from left to right; then the next row up.");
        flow.Point("Cut each sheet at the dashed line on its left and lower side where it has a neighbour there. Sides without a dashed line stay as they are.");
        flow.Point("Lay it over that neighbour so that both halves of the crosses on the cut line meet, and tape it. Two crosses or more stand on every joint.");
        if (layout.JoiningCount > 0)
            flow.Point($"Grey sheets carry no mark; they only join the others: {string.Join(", ", layout.Sheets.Where(s => s.Joining).Select(s => s.Name))}.");
        flow.Heading("Measure the taped guide");
        foreach (var check in Checks(plan))
            flow.Point(check);
        flow.Point("If one is out by more than 3 mm: look for the joint where the crosses do not meet, slit its tape and lay it again. If all are out by the same part, measure the printer check again.", TextStyle.Strong);
        return flow.Finish();
    }

    private static IEnumerable<Element> Picture(Plan plan, SheetLayout layout, FramePlacing placing)
    {
        var outline = plan.Pins.Pinned.Ring(0.5).Select(placing.On).ToList();
        var taken = new TakenPlaces();
        for (var i = 0; i < outline.Count; i++)
            taken.AddLeader(outline[i], outline[(i + 1) % outline.Count]);
        foreach (var sheet in layout.Sheets)
        {
            var box = placing.On(sheet.Window);
            yield return new PathElement(PathSteps.Rectangle(box), new(0.25, 0.3), new Fill(sheet.Joining ? 0.85 : 1));
            // Long names on small sheets get smaller; beside the outline where there is room.
            var size = Math.Min(5, 0.6 * box.Width / TextMeasure.AdvanceMm(sheet.Name, 1, FontWeight.Bold));
            var name = Box.About(box.Centre, TextMeasure.AdvanceMm(sheet.Name, size, FontWeight.Bold), 0.7 * size);
            double dx = ((box.Width - name.Width) / 2) - 1, dy = ((box.Height - name.Height) / 2) - 1;
            var spots = from y in new[] { 0, -dy, dy } from x in new[] { 0, -dx, dx } select name.Moved(new(x, y));
            var at = spots.Where(b => taken.IsFree(b.Grown(0.5))).Append(name).First();
            yield return new TextElement(sheet.Name, new(at.Left, at.Lower), size, FontWeight.Bold, Grey: 0.2);
        }

        yield return new PathElement(PathSteps.Polyline(outline, true), new(0.6));
    }

    /// <summary>Distances between corners, straight: edges, then diagonals, then the depth of a triangle along its spine.</summary>
    private static IEnumerable<string> Checks(Plan plan)
    {
        var units = plan.Project.Units;
        var outline = plan.Pins.Pinned;
        var sharp = Enumerable.Range(0, outline.Edges.Count).Where(i => !outline.Corners[i].Smooth).ToList();
        var marks = plan.Pins.Marks.Where(m => m.IsCorner).ToDictionary(m => m.Edge);
        string Name(int corner) => marks.TryGetValue(corner, out var mark) ? string.Create(CultureInfo.InvariantCulture, $"{outline.Corners[corner].Name} (mark {mark.Number})") : outline.Corners[corner].Name;
        string Say(double mm) => $"{LengthWords.Of(Length.FromMillimetres(mm), LengthUnit.Millimetres)} ({LengthWords.Of(Length.FromMillimetres(mm), units)})";
        // Of many corners the pairs farthest apart: a turned joint shows most there.
        var pairs = sharp.SelectMany((a, i) => sharp.Skip(i + 1).Select(b => (From: a, To: b, Mm: outline.CornerAt(a).DistanceTo(outline.CornerAt(b))))).ToList();
        foreach (var (from, to, mm) in sharp.Count > MostCornersInPairs ? pairs.OrderByDescending(p => p.Mm).Take(MostOfMany) : pairs)
            yield return $"{Name(from)} to {Name(to)}, straight: {Say(mm)}.";

        if (plan.Pins.Mirror is { } mirror)
        {
            // The spine: from the corner on the axis to the mark at the middle of the edge across it.
            var corner = sharp.FindIndex(c => mirror.Partner[c] == (c + outline.Edges.Count - 1) % outline.Edges.Count);
            var middle = plan.Pins.Marks.FirstOrDefault(m => mirror.Partner[m.Edge] == m.Edge && m.Fraction == 0.5);
            if (corner >= 0 && middle is not null)
                yield return string.Create(CultureInfo.InvariantCulture, $"Along the spine, {Name(sharp[corner])} to the middle of the {outline.Edges[middle.Edge].Name} edge (mark {middle.Number}): {Say(outline.CornerAt(sharp[corner]).DistanceTo(middle.At))}.");
        }

        var box = Box.Around(outline.Ring());
        if (sharp.Count < 2)
            yield return $"Greatest width {Say(box.Width)}, greatest height {Say(box.Height)}.";
    }
}
