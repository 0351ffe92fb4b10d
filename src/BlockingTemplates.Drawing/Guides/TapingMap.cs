using System.Globalization;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>How the sheets lie together, in which order they are taped, and what to measure on the taped guide.</summary>
internal static class TapingMap
{
    private const double MostPictureMm = 140;
    private const int MostChecks = 12;

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
        foreach (var check in Checks(plan).Take(MostChecks))
            flow.Point(check);
        flow.Point("If one is out by more than 3 mm: look for the joint where the crosses do not meet, slit its tape and lay it again. If all are out by the same part, measure the printer check again.", TextStyle.Strong);
        return flow.Finish();
    }

    private static IEnumerable<Element> Picture(Plan plan, SheetLayout layout, FramePlacing placing)
    {
        foreach (var sheet in layout.Sheets)
        {
            var box = placing.On(sheet.Window);
            yield return new PathElement(PathSteps.Rectangle(box), new(0.25, 0.3), new Fill(sheet.Joining ? 0.85 : 1));
            // Long names on small sheets get smaller.
            var size = Math.Min(5.5, 0.8 * box.Width / Math.Max(1e-9, TextMeasure.AdvanceMm(sheet.Name, 1, FontWeight.Bold)));
            yield return new TextElement(sheet.Name, new(box.Centre.X, box.Centre.Y - (0.33 * size)), size, FontWeight.Bold, TextAlign.Centre, Grey: 0.2);
        }

        yield return new PathElement(PathSteps.Polyline(plan.Pins.Pinned.Ring(0.5).Select(placing.On), true), new(0.6));
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
        for (var a = 0; a < sharp.Count; a++)
        {
            for (var b = a + 1; b < sharp.Count; b++)
                yield return $"{Name(sharp[a])} to {Name(sharp[b])}, straight: {Say(outline.CornerAt(sharp[a]).DistanceTo(outline.CornerAt(sharp[b])))}.";
        }

        foreach (var corner in sharp)
        {
            // The spine: from a corner to the middle of the edge across from it, where that has a mark.
            var across = (corner + (outline.Edges.Count / 2)) % outline.Edges.Count;
            var middle = plan.Pins.Marks.FirstOrDefault(m => m.Edge == across && Math.Abs(m.Fraction - 0.5) < 1e-9);
            if (outline.Edges.Count == 3 && middle is not null)
                yield return string.Create(CultureInfo.InvariantCulture, $"{Name(corner)} to the middle of the {outline.Edges[across].Name} edge (mark {middle.Number}): {Say(outline.CornerAt(corner).DistanceTo(middle.At))}.");
        }

        var box = Box.Around(outline.Ring());
        if (sharp.Count < 2)
            yield return $"Greatest width {Say(box.Width)}, greatest height {Say(box.Height)}.";
    }
}
