using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>One sheet of the guide as a page: its part of the picture, cut lines, and what stands in its margins.</summary>
internal sealed class SheetPage
{
    /// <summary>How near to the paper's side anything is printed, in millimetres: the widest unprintable border in common printer descriptions (18 points).</summary>
    public const double PrintableMm = 6.35;

    private const double TextMm = 3.4;
    private const double BaselineMm = PrintableMm + 1.2;
    private const double ScaleBarMm = 100;
    private const double BarTickMm = 1.4;
    private readonly Plan _plan;
    private readonly Guide _guide;
    private readonly Sheet _sheet;
    private readonly double _width;
    private readonly double _height;
    private readonly double _trueX;
    private readonly double _trueY;
    private readonly Box _print;

    public SheetPage(Plan plan, Guide guide, Sheet sheet)
    {
        (_plan, _guide, _sheet) = (plan, guide, sheet);
        var layout = guide.Layout;
        double narrow = guide.Paper.Short.Millimetres, wide = guide.Paper.Long.Millimetres;
        (_width, _height) = layout.Landscape ? (wide, narrow) : (narrow, wide);
        // Page millimetres for one true millimetre: 1 unless the printer check measured something else.
        (_trueX, _trueY) = layout.Landscape ? (1 / guide.Check.AlongLong, 1 / guide.Check.AlongShort) : (1 / guide.Check.AlongShort, 1 / guide.Check.AlongLong);
        var print = layout.PrintedBox(sheet);
        double left = layout.Margin * _trueX, lower = layout.Margin * _trueY;
        _print = new(left, lower, left + (print.Width * _trueX), lower + (print.Height * _trueY));
    }

    public Page Draw(GuidePicture picture, string? bookmark)
    {
        var window = _sheet.Window;
        var at = new Point(_print.Left - (window.Left * _trueX), _print.Lower - (window.Lower * _trueY));
        List<Element> content =
        [
            new PlacedElement(picture.On(_sheet), at, _trueX, _print, _trueY),
            .. Joints(),
            .. Head(),
            .. Foot(),
            .. LeftSide(),
            .. RightSide(),
        ];
        return new(_width, _height, content, _sheet.Name, bookmark);
    }

    private Sheet? Neighbour(int rows, int columns) => _guide.Layout.At(_sheet.Row + rows, _sheet.Column + columns);

    private IEnumerable<Element> Joints()
    {
        double right = _print.Left + (_sheet.Window.Width * _trueX), upper = _print.Lower + (_sheet.Window.Height * _trueY);
        if (Neighbour(0, -1) is not null)
            yield return Vertical(_print.Left, PrintableMm, _height - PrintableMm, GuideInk.SheetCut);
        if (Neighbour(-1, 0) is not null)
            yield return Horizontal(_print.Lower, PrintableMm, _width - PrintableMm, GuideInk.SheetCut);
        if (Neighbour(0, 1) is not null)
            yield return Vertical(right, _print.Lower, _print.Upper, GuideInk.SheetEdge);
        if (Neighbour(1, 0) is not null)
            yield return Horizontal(upper, _print.Left, _print.Right, GuideInk.SheetEdge);
    }

    private IEnumerable<Element> Head()
    {
        var y = _height - BaselineMm - 2.6;
        var name = $"Sheet {_sheet.Name}";
        yield return new TextElement(name, new(_print.Left + 2, y), 4.6, FontWeight.Bold);
        var side = _plan.Piece.FaceUp == WorkSide.RightSide ? "right side of the work up" : "wrong side of the work up";
        var words = $"{_guide.Paper.Name}, print at actual size. Lay the {side}.";
        var x = _print.Left + 2 + TextMeasure.AdvanceMm(name, 4.6, FontWeight.Bold) + 5;
        yield return new TextElement(words, new(x, y), TextMm);
        var top = UpArrow.Words(_plan);
        var topWidth = TextMeasure.AdvanceMm(top, TextMm);
        if (x + TextMeasure.AdvanceMm(words, TextMm) + topWidth + 14 > _print.Right)
            yield break;
        yield return new TextElement(top, new(_print.Right - 2, y), TextMm, FontWeight.Bold, TextAlign.Right);
        foreach (var element in UpArrow.At(new(_print.Right - topWidth - 5.5, y + 3.6 - (UpArrow.LengthMm / 2)), _plan))
            yield return element;
    }

    private IEnumerable<Element> Foot()
    {
        foreach (var element in Bar(new(_print.Left + 2, PrintableMm + BarTickMm), false, ScaleBarMm, "100 mm"))
            yield return element;
        if (_print.Width < ScaleBarMm + 40)
            yield break;
        var words = Neighbour(-1, 0) is { } below ? $"cut at the dashed line, lay over {below.Name}" : "nothing to join below";
        yield return new TextElement(words, new(_print.Right - 2, BaselineMm), TextMm, Align: TextAlign.Right);
    }

    private IEnumerable<Element> LeftSide()
    {
        var inch = Engine.Measure.Length.FromInches(4).Millimetres;
        foreach (var element in Bar(new(PrintableMm + 3.2, _print.Lower + 2), true, inch, "4 in"))
            yield return element;
        if (_print.Height < inch + 60)
            yield break;
        var words = Neighbour(0, -1) is { } left ? $"cut at the dashed line, lay over {left.Name}" : "nothing to join on the left";
        yield return new TextElement(words, new(BaselineMm + 2.6, _print.Upper - 2), TextMm, Align: TextAlign.Right, AngleDegrees: 90);
    }

    private IEnumerable<Element> RightSide()
    {
        var x = _width - BaselineMm;
        var right = Neighbour(0, 1) is { } next ? $"{next.Name} is laid over this side" : "nothing to join on the right";
        var above = Neighbour(1, 0) is { } over ? $"{over.Name} is laid over the upper side" : "nothing to join above";
        yield return new TextElement($"{right}; {above}", new(x, _print.Lower + 2), TextMm, AngleDegrees: 90);
    }

    /// <summary>A bar of a true length with its ends ticked and its length written beside it.</summary>
    private IEnumerable<Element> Bar(Point from, bool isUpright, double trueMm, string words)
    {
        var along = isUpright ? new Vector(0, trueMm * _trueY) : new Vector(trueMm * _trueX, 0);
        var tick = isUpright ? new Vector(BarTickMm, 0) : new Vector(0, BarTickMm);
        var to = from + along;
        yield return new PathElement(PathSteps.Line(from, to), GuideInk.Scale);
        yield return new PathElement(PathSteps.Line(from - tick, from + tick), GuideInk.Scale);
        yield return new PathElement(PathSteps.Line(to - tick, to + tick), GuideInk.Scale);
        var middle = from.Toward(to, 0.5) + (isUpright ? new Vector(-0.8, 0) : new Vector(0, 0.6));
        yield return new TextElement(words, middle, 2.8, Align: TextAlign.Centre, AngleDegrees: isUpright ? 90 : 0);
    }

    private static PathElement Vertical(double x, double from, double to, Stroke stroke) => new(PathSteps.Line(new(x, from), new(x, to)), stroke);

    private static PathElement Horizontal(double y, double from, double to, Stroke stroke) => new(PathSteps.Line(new(from, y), new(to, y)), stroke);
}
