using BlockingTemplates.Drawing.Cloths;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Overviews;

/// <summary>The piece on its mats, to scale, with its measurements: one picture to hang beside the mats.</summary>
public static class OverviewPicture
{
    private const double FontMm = 3.6;
    private const double LineMm = 4.4;
    private const double DimensionMm = 14;
    private const double LegendAboveMm = 0.5;
    private const double WordsBelowMm = 3.6;

    /// <summary>The picture as a page of its own, as wide as asked and as high as it needs.</summary>
    public static Page Draw(Plan plan, double widthMm = 280)
    {
        ArgumentNullException.ThrowIfNull(plan);
        const double side = 8, head = 22, foot = 13;
        var extent = Extent(plan);
        var drawn = widthMm - (2 * side) - (2 * DimensionMm);
        var height = Math.Min(drawn * extent.Height / extent.Width, 1.4 * widthMm);
        var box = new Box(side, foot, widthMm - side, foot + height + (2 * DimensionMm));
        var total = box.Upper + head;
        var units = plan.Project.Units;
        List<Element> content = [.. In(plan, box, clothAround: box)];
        foreach (var (line, i) in TextMeasure.Wrap(GuideDocument.Title(plan), widthMm - (2 * side), 7, FontWeight.Bold).Take(1).Select((l, i) => (l, i)))
            content.Add(new TextElement(line, new(side, total - 10 - (8 * i)), 7, FontWeight.Bold));
        var stretch = plan.Pins.LayLine is null ? "" : $", largest pull {LengthWords.Of(Length.FromMillimetres(plan.Pins.Marks.Max(m => m.Pull?.Length ?? 0)), units)}";
        content.Add(new TextElement($"{plan.Mats.Mats.Count} mats, {plan.Pins.Marks.Count} pins{stretch}", new(side, total - 17), 4.6));
        content.Add(new TextElement("Solid line: pinned outline with its marks. Dashed line: where the piece lies before the first pin. Squares: mats.", new(side, 5), 3.4, Grey: 0.2));
        return new(widthMm, total, content, "overview", "Overview");
    }

    /// <summary>The height at which the picture fills a width.</summary>
    internal static double HeightFor(Plan plan, double widthMm)
    {
        var extent = Extent(plan);
        return ((widthMm - (2 * DimensionMm)) * extent.Height / extent.Width) + (2 * DimensionMm);
    }

    /// <summary>The picture fitted into a box of a page, with the numbers of rounds up to one, and with the cloth's layers where a box is given that their words stand around.</summary>
    internal static IEnumerable<Element> In(Plan plan, Box box, int mostRound = int.MaxValue, Box? clothAround = null)
    {
        var placing = FramePlacing.Fit(Extent(plan), box.Grown(-DimensionMm));
        var picture = new FieldPicture(plan, placing);
        List<Element> mats = [.. picture.Mats(true)];
        List<Element> content =
        [
            new LayerElement(GuideLayers.Mats, mats),
            new LayerElement(GuideLayers.LayLine, [.. picture.LayLine()]),
            new LayerElement(GuideLayers.OutlineAndMarks, [.. picture.Outline(), .. picture.Marks(0.75)]),
        ];
        if (plan.Cloth is { } cloth && clothAround is { } around)
        {
            // Under the lines, over the mats, whose names stay free.
            var names = mats.OfType<TextElement>().Select(t => new Box(t.At.X, t.At.Y, t.At.X + TextMeasure.AdvanceMm(t.Text, t.SizeMm), t.At.Y + (t.SizeMm * TextMeasure.CapHeight())).Grown(0.5));
            content.Insert(1, ClothLayers.Stretch(plan, cloth, placing, [.. names], new(around.Right, around.Upper + LegendAboveMm)));
            content.Add(ClothLayers.PredictedEdge(cloth, placing, new(around.Left, around.Lower - WordsBelowMm)));
        }

        List<Element> dimensions = [.. Dimensions(plan, placing)];
        foreach (var text in dimensions.OfType<TextElement>())
            picture.Keep(TextBox(text));
        content.Add(new LayerElement(GuideLayers.Numbers, [.. picture.Numbers(3.4, mostRound)]));
        content.AddRange(picture.EdgeLengths(FontMm));
        content.AddRange(dimensions);
        if (plan.PieceTurn != 0)
        {
            var width = UpArrow.LengthMm + 2 + TextMeasure.AdvanceMm(UpArrow.Words(plan), FontMm, FontWeight.Bold);
            content.AddRange(UpArrow.WithWords(new(box.Right - width, box.Upper - 5), plan));
        }

        return content.Where(e => e is not LayerElement { Content.Count: 0 });
    }

    /// <summary>What is drawn; beside a turned piece also the stretches its dimensions run along.</summary>
    private static Box Extent(Plan plan)
    {
        var extent = FieldPicture.Extent(plan);
        if (plan.PieceTurn == 0)
            return extent;
        var (turn, all, pinned) = (Affine.Turn(plan.PieceTurn), AlongPiece(plan), Box.Around(plan.UprightPinned.Ring()));
        Point[] ends = [new(pinned.Left, all.Lower), new(pinned.Right, all.Lower), new(all.Left, pinned.Lower), new(all.Left, pinned.Upper)];
        return Box.Around([new(extent.Left, extent.Lower), new(extent.Right, extent.Upper), .. ends.Select(turn.Map)]);
    }

    /// <summary>The box that holds mats and lines in the directions of the piece: where the dimensions stand beside it.</summary>
    private static Box AlongPiece(Plan plan)
    {
        if (plan.PieceTurn == 0)
            return FieldPicture.Extent(plan);
        var back = Affine.Turn(-plan.PieceTurn);
        double x = plan.Mats.PitchX, y = plan.Mats.PitchY;
        var corners = plan.Mats.Mats.SelectMany(m => new[] { m.At, m.At + new Vector(x, 0), m.At + new Vector(x, y), m.At + new Vector(0, y) });
        return Box.Around(corners.Concat(plan.Pins.LayLine?.Ring() ?? []).Select(back.Map));
    }

    /// <summary>Width and height of the pinned outline below and beside the field, with the finished size, turned as the piece is.</summary>
    private static IEnumerable<Element> Dimensions(Plan plan, FramePlacing placing)
    {
        var pinned = Box.Around(plan.UprightPinned.Ring());
        var finished = Box.Around(plan.Piece.Finished.Ring());
        var (all, turn) = (AlongPiece(plan), Affine.Turn(plan.PieceTurn));
        // Points stand out beyond the sizes by name.
        var (across, up) = plan.Piece.Edges.Any(e => e.Points is not null) ? ("width over all", "height over all") : (plan.Project.Kind.AcrossName, plan.Project.Kind.UpName);
        Vector down = turn.Map(new Vector(0, -1)), leftward = turn.Map(new Vector(-1, 0));
        Point Beside(double x, double y, Vector off) => placing.On(turn.Map(new Point(x, y))) + (4 * off);
        foreach (var element in Arrow(Beside(pinned.Left, all.Lower, down), Beside(pinned.Right, all.Lower, down), Words(across, finished.Width, pinned.Width), false))
            yield return element;
        foreach (var element in Arrow(Beside(all.Left, pinned.Lower, leftward), Beside(all.Left, pinned.Upper, leftward), Words(up, finished.Height, pinned.Height), true))
            yield return element;
    }

    private static string[] Words(string name, double finished, double pinned) =>
        Math.Abs(pinned - finished) < 0.5 ? [$"{name} {LengthWords.InBoth(finished)}"] : [$"{name} {LengthWords.InBoth(finished)}", $"pinned to {LengthWords.InBoth(pinned)}"];

    private static IEnumerable<Element> Arrow(Point from, Point to, string[] words, bool isUpright)
    {
        var along = (to - from).Unit;
        var side = along.TurnedLeft;
        var angle = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        yield return new PathElement(PathSteps.Line(from, to), new(0.2));
        foreach (var (tip, into) in new[] { (from, along), (to, -along) })
            yield return new PathElement(PathSteps.Polyline([tip, tip + (2 * into) + (0.7 * side), tip + (2 * into) - (0.7 * side)], true), null, new Fill());
        for (var i = 0; i < words.Length; i++)
        {
            // Written away from the field: leftward beside it, downward below it; the first line is read first.
            var line = isUpright ? words.Length - 1 - i : i;
            var off = 1.2 + (line * LineMm);
            var middle = from.Toward(to, 0.5) + (isUpright ? off * side : -(off + (0.7 * FontMm)) * side);
            yield return new TextElement(words[i], middle, FontMm, i == 0 ? FontWeight.Bold : FontWeight.Regular, TextAlign.Centre, angle);
        }
    }

    private static Box TextBox(TextElement text)
    {
        var half = TextMeasure.AdvanceMm(text.Text, text.SizeMm, text.Weight) / 2;
        var along = Vector.AtAngle(text.AngleDegrees * Math.PI / 180);
        Vector up = text.SizeMm * along.TurnedLeft, down = -text.SizeMm * TextMeasure.Descent(text.Weight) * along.TurnedLeft;
        return Box.Around([text.At - (half * along) + down, text.At + (half * along) + down, text.At - (half * along) + up, text.At + (half * along) + up]);
    }
}
