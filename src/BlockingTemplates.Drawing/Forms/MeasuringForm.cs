using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>One page to measure a kind of piece with: the shape, where to lay the tape, blanks to fill in.</summary>
public static class MeasuringForm
{
    private const double PictureMm = 88;
    private const double LargePictureMm = 112;

    /// <summary>A kind with more tapes than this by name gets the large picture.</summary>
    private const int FewTapes = 4;

    /// <summary>Where along a line its name stands, clear of what crosses the middle.</summary>
    private const double NameAt = 0.3;

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
        flow.Draw(Sketch(kind, flow.Take(kind.TapeLines.Count > FewTapes ? LargePictureMm : PictureMm)));
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

    /// <summary>The shape with its names, the straight tape from corner to corner dashed, the bow as a short arrow.</summary>
    private static IEnumerable<Element> Sketch(PieceKind kind, Box box)
    {
        var outline = kind.Sketch;
        var ring = outline.Ring(0.5);
        var placing = FramePlacing.Fit(Box.Around([.. ring, .. kind.TapeLines.SelectMany(l => new[] { l.From, l.To })]), box.Grown(-11));
        yield return new PathElement(PathSteps.Polyline(ring.Select(placing.On), true), new(0.6), new Fill(0.95));
        for (var i = 0; i < outline.Edges.Count; i++)
        {
            var curve = outline.Edges[i].Curve;
            Point from = placing.On(curve.Start), to = placing.On(curve.End), middle = placing.On(curve.At(0.5));
            var outward = (to - from).Unit.TurnedRight;
            var foot = from.Toward(to, 0.5);
            var takesBow = kind.GivenByCorners || kind.StraightEdges.Contains(outline.Edges[i].Name);
            if (takesBow)
                yield return new PathElement(PathSteps.Line(from, to), new(0.3, 0.2, [2, 1.2]));
            if (takesBow && foot.DistanceTo(middle) > 0.5)
                yield return new PathElement(PathSteps.Line(foot, middle), new(0.5));
            var outer = (middle - foot).Dot(outward) > 0 ? middle : foot;
            if (!takesBow)
                (outer, outward) = (placing.On(curve.At(NameAt)), curve.Direction(NameAt).TurnedRight);
            yield return Label(outline.Edges[i].Name, outer, outward, TextStyle.Strong.SizeMm, FontWeight.Bold);
            var inner = outer == middle ? foot : middle;
            if (takesBow && (kind.GivenByCorners || kind.IsMeasuredBySides))
                yield return Label("bow", inner, -outward, TextStyle.Small.SizeMm, FontWeight.Regular);
            yield return new PathElement(PathSteps.Circle(from, 1), null, new Fill());
            if (kind.TapeLines.Count > FewTapes)
                continue;
            var corner = (from - placing.On(Box.Around(ring).Centre)).Unit;
            yield return Label(outline.Corners[i].Name, from, corner, TextStyle.Small.SizeMm, FontWeight.Regular);
        }

        foreach (var line in kind.TapeLines)
        {
            Point from = placing.On(line.From), to = placing.On(line.To);
            yield return new PathElement(PathSteps.Line(from, to), new(0.3, 0.2, [2, 1.2]));
            yield return Label(line.Name, from.Toward(to, NameAt), Math.Abs(to.X - from.X) > Math.Abs(to.Y - from.Y) ? new(0, 1) : new(1, 0), TextStyle.Small.SizeMm, FontWeight.Regular);
        }
    }

    private static string Name(LengthUnit units) => units switch
    {
        LengthUnit.Millimetres => "millimetres",
        LengthUnit.Centimetres => "centimetres",
        LengthUnit.Inches => "inches",
        _ => throw new ArgumentOutOfRangeException(nameof(units)),
    };

    private static TextElement Label(string text, Point at, Vector away, double size, FontWeight weight)
    {
        var half = TextMeasure.AdvanceMm(text, size, weight) / 2;
        var off = away.Length > 0 ? 1.8 + (Math.Abs(away.X) * half) + (Math.Abs(away.Y) * size / 2) : 0;
        var centre = at + (off * away);
        return new(text, new(centre.X, centre.Y - (0.35 * size)), size, weight, TextAlign.Centre);
    }
}
