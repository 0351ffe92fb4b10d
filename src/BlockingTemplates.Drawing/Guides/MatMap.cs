using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Which mats are joined where, how the outline lies on them, which seams to tape, and what to lay out to hold the edges.</summary>
internal static class MatMap
{
    private const double MostPictureMm = 130;

    public static IReadOnlyList<Page> Draw(Plan plan, Paper reading)
    {
        var flow = new PageFlow(reading.Short.Millimetres, reading.Long.Millimetres, "mats", "Mat map");
        var units = plan.Project.Units;
        var mats = plan.Mats;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        flow.Paragraph("Mat map", TextStyle.Title);
        flow.Paragraph(FormattableString.Invariant($"{mats.Mats.Count} mats of {Say(mats.PitchX)} by {Say(mats.PitchY)} (from one mat to the next once joined), {mats.Columns} across and {mats.Rows} up{Turn(plan)}. Column letters from the left, row 1 nearest you."), TextStyle.Body);
        flow.Gap(2);
        if (plan.PieceTurn != 0)
        {
            var line = flow.Take(6);
            flow.Draw(UpArrow.WithWords(new(line.Left, line.Lower + 1.8), plan));
        }

        var extent = FieldPicture.Extent(plan).Grown(MatTeeth.ReachMm);
        var box = flow.Take(Math.Min(MostPictureMm, flow.Column.Width * extent.Height / extent.Width));
        var placing = FramePlacing.Fit(extent, box);
        var picture = new FieldPicture(plan, placing);
        flow.Draw([.. MatTeeth.Of(mats, placing), .. picture.MatNames(), .. picture.LayLine(), .. picture.Wires(), .. picture.Outline(), .. picture.Marks(0.7), .. picture.Numbers(3)]);
        flow.Gap(3);
        foreach (var mark in plan.Pins.Marks.Where(m => m.Round <= 2))
        {
            var seat = mats.Seats[mark.Number - 1];
            var name = mark.IsCorner ? plan.Pins.Pinned.Corners[mark.Edge].Name : $"{plan.Pins.Edges[mark.Edge].Name} edge";
            flow.Point(FormattableString.Invariant($"Mark {mark.Number} ({name}) stands on {seat.Mat}, {Say(seat.OnMat.X)} from its left and {Say(seat.OnMat.Y)} from its lower side."));
        }

        flow.Heading("Seams to tape");
        var near = mats.Seats.Where(s => s.NearSeam).ToList();
        if (near.Count > 0)
            flow.Point($"Marks too near a seam to hold a pin well; tape the seam there: {string.Join(", ", near.Select(s => FormattableString.Invariant($"{s.Number} on {s.Mat}")))}.");
        if (mats.CrossedSeams.Count > 0)
            flow.Point($"A pull crosses these seams near a pin and may open them; tape them underneath: {string.Join(", ", mats.CrossedSeams.Select(s => $"{s.First} to {s.Second}"))}.");
        if (near.Count == 0 && mats.CrossedSeams.Count == 0)
            flow.Point("None.");
        HoldingLists.Draw(plan, flow);
        return flow.Finish();
    }

    private static string Turn(Plan plan) =>
        TurnWords.Of(plan) is not { } words ? ""
        : plan.PieceTurn == 0 ? $", {words}"
        : $", {words}: the arrow shows where its {UpArrow.Words(plan)} lies";
}
