using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>One page to measure a kind of piece with: the shape, where to lay the tape, blanks to fill in.</summary>
public static class MeasuringForm
{
    private const double PictureMm = 88;
    private const double LargePictureMm = 112;

    private const double RowMm = 7.5;

    /// <summary>The form of a kind of piece, on A4 (on Letter for makers who measure in inches).</summary>
    public static Document Draw(PieceKind kind, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var (width, height) = units == LengthUnit.Inches ? (Length.FromInches(8.5), Length.FromInches(11)) : (Length.FromMillimetres(210), Length.FromMillimetres(297));
        var flow = new PageFlow(width.Millimetres, height.Millimetres, "form", "Measuring form", 14);
        flow.Paragraph($"Measuring form: {kind.Shape}", TextStyle.Title);
        flow.Paragraph($"Lay the piece flat, lower edge nearest you, the side up that you will pin it with. Pat it, do not pull. Read the tape to the nearest {(units == LengthUnit.Inches ? "1/4 in" : "half centimetre")}; all in {Name(units)}.", TextStyle.Body);
        flow.Gap(1);
        flow.Draw(TapePicture.OfSketch(kind, flow.Take(kind.TapeLines.Count > TapePicture.FewTapes ? LargePictureMm : PictureMm)).Content);
        flow.Gap(1);
        if (kind.FinishedSizes.Count > 0 && ReferenceEquals(kind.FinishedSizes, kind.UnblockedSizes))
        {
            flow.Heading("Two blanks each: unblocked as it lies now; finished as you want it");
            BySizes(kind.FinishedSizes, flow, units, 2);
            Bows(kind, flow, units);
        }
        else
        {
            if (kind.FinishedSizes.Count > 0)
                flow.Heading("Finished size you want");
            BySizes(kind.FinishedSizes, flow, units, 1);
            flow.Heading("Unblocked, as it lies now");
            BySizes(kind.UnblockedSizes, flow, units, 1);
            if (kind.GivenByCorners)
                ByCorners(kind, flow, units);
            else if (kind.IsMeasuredBySides)
                BySides(kind, flow, units);
            else
                Bows(kind, flow, units);
        }

        flow.Gap(2);
        if (kind.GivenByCorners || kind.StraightEdges.Count > 0)
            flow.Paragraph("Bow: the greatest distance of the edge from the straight line between its corners; outward is positive, inward negative.", TextStyle.Small);
        flow.Paragraph("Measured dry or damp? Circle one:  dry  /  damp", TextStyle.Small);
        return new($"Measuring form: {kind.Shape}", flow.Finish());
    }

    private static void BySides(PieceKind kind, PageFlow flow, LengthUnit units)
    {
        for (var i = 0; i < kind.EdgeNames.Count; i++)
        {
            var (from, to) = (kind.CornerNames[i], kind.CornerNames[(i + 1) % kind.CornerNames.Count]);
            Blank(flow, $"{kind.EdgeNames[i]}: straight from {from} to {to}; and its bow", units, 2);
        }

        if (kind.TakesDiagonal)
            Blank(flow, $"diagonal: straight from {kind.CornerNames[0]} to {kind.CornerNames[2]}", units, 1);
        Blank(flow, "stitches or rows along edges, if you counted them", null, 2);
    }

    private static void Bows(PieceKind kind, PageFlow flow, LengthUnit units)
    {
        foreach (var edges in kind.StraightEdges.Chunk(2))
            Blank(flow, $"unblocked bow of {string.Join("; of ", edges)}", units, edges.Length);
        Blank(flow, "stitches or rows along edges, if you counted them", null, 2);
    }

    private static void BySizes(IReadOnlyList<SizeName> sizes, PageFlow flow, LengthUnit units, int count)
    {
        foreach (var size in sizes)
            Blank(flow, $"{size.Words}{(size.IsAsked ? "" : size.IsOptional ? ", if not 0" : $", instead of {size.InsteadOf}")}: {size.HowToTake}", units, count);
    }

    private static void ByCorners(PieceKind kind, PageFlow flow, LengthUnit units)
    {
        flow.Paragraph("Lay the piece on a squared cloth or beside two tapes at a right angle. For each corner, counter-clockwise: how far to the right, how far up. For each edge its bow, or its distance from the straight line at a few stations.", TextStyle.Body);
        for (var i = 0; i < kind.Sketch.Edges.Count; i++)
        {
            Blank(flow, $"corner {i + 1}: to the right, up", units, 2);
            Blank(flow, $"edge {i + 1}, from corner {i + 1} to corner {((i + 1) % kind.Sketch.Edges.Count) + 1}: bow", units, 1);
        }

        flow.Paragraph("Measure the finished outline in the same way, with the same corners and edges.", TextStyle.Body);
    }

    /// <summary>A line of words with blanks to write in at its right.</summary>
    private static void Blank(PageFlow flow, string words, LengthUnit? units, int count)
    {
        const double blank = 28, gap = 4;
        var style = TextStyle.Body;
        var lineMm = 1.25 * style.SizeMm;
        var width = flow.Take(0).Width - (count * (blank + gap));
        var lines = TextMeasure.Wrap(words, width, style.SizeMm);
        var box = flow.Take(RowMm + ((lines.Count - 1) * lineMm));
        var y = box.Lower + 2;
        for (var i = 0; i < lines.Count; i++)
            flow.Draw(new TextElement(lines[i], new(box.Left, y + ((lines.Count - 1 - i) * lineMm)), style.SizeMm));
        for (var i = 0; i < count; i++)
        {
            var right = box.Right - (i * (blank + gap));
            flow.Draw(new PathElement(PathSteps.Line(new(right - blank, y - 0.8), new(right, y - 0.8)), new(0.25)));
            if (units is { } unit)
                flow.Draw(new TextElement(LengthWords.UnitOf(unit), new(right, y), style.SizeMm, Align: TextAlign.Right, Grey: 0.3));
        }
    }

    private static string Name(LengthUnit units) => units switch
    {
        LengthUnit.Millimetres => "millimetres",
        LengthUnit.Centimetres => "centimetres",
        LengthUnit.Inches => "inches",
        _ => throw new ArgumentOutOfRangeException(nameof(units)),
    };
}
