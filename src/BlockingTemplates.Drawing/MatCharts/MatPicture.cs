using System.Globalization;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.MatCharts;

/// <summary>One mat of the mat chart: its square with grid, outline and marks, and the list of its marks below.</summary>
internal sealed class MatPicture
{
    private const double HeadMm = 6.5;
    private const double ScaleTextMm = 5;
    private const double MostPictureMm = 74;
    private const double RowMm = 5.5;
    private const double TextMm = 4;
    private const double BetweenMm = 4;
    private const int ListColumns = 2;
    private const double NumberMm = 4.2;
    private static readonly Stroke Thin = new(0.1, 0.75);
    private static readonly Stroke Strong = new(0.2, 0.5);
    private readonly Plan _plan;
    private readonly Mat _mat;
    private readonly double _width;
    private readonly double _scale;
    private readonly List<Mark> _marks;

    public MatPicture(Plan plan, Mat mat, double widthMm)
    {
        (_plan, _mat, _width) = (plan, mat, widthMm);
        _marks = [.. plan.Pins.Marks.Where(m => plan.Mats.Seats[m.Number - 1].Mat == mat.Name)];
        _scale = Math.Min((widthMm - ScaleTextMm - 1) / plan.Mats.PitchX, MostPictureMm / plan.Mats.PitchY);
    }

    public bool HasMarks => _marks.Count > 0;

    public double HeightMm => HeadMm + (_scale * _plan.Mats.PitchY) + ScaleTextMm + 2 + ((ListRows + 1) * RowMm);

    /// <summary>Width of the square with its figures.</summary>
    public double SquareWidthMm => ScaleTextMm + (_scale * _plan.Mats.PitchX) + 2;

    /// <summary>Height of head, square and figures.</summary>
    public double SquareHeightMm => HeadMm + (_scale * _plan.Mats.PitchY) + ScaleTextMm;

    private int ListRows => (_marks.Count + ListColumns - 1) / ListColumns;

    /// <summary>The picture below and to the right of a corner of the page.</summary>
    public IEnumerable<Element> Draw(Point upperLeft) => [.. Square(upperLeft), .. List(SquareAt(upperLeft).Lower - ScaleTextMm - 2, upperLeft.X)];

    /// <summary>The square without its list, one mark ringed and its distances from left and lower side drawn.</summary>
    public IEnumerable<Element> CloseUp(Point upperLeft, int number)
    {
        var square = SquareAt(upperLeft);
        var at = PlacingIn(square).On(_plan.Pins.Marks[number - 1].At);
        return
        [
            .. Square(upperLeft),
            new PathElement(PathSteps.Line(new(square.Left, at.Y), at), new(0.5, 0, [2, 1])),
            new PathElement(PathSteps.Line(new(at.X, square.Lower), at), new(0.5, 0, [2, 1])),
            new PathElement(PathSteps.Circle(at, 5.2), new(0.8)),
        ];
    }

    private Box SquareAt(Point upperLeft) => new(
        upperLeft.X + ScaleTextMm,
        upperLeft.Y - HeadMm - (_scale * _plan.Mats.PitchY),
        upperLeft.X + ScaleTextMm + (_scale * _plan.Mats.PitchX),
        upperLeft.Y - HeadMm);

    private FramePlacing PlacingIn(Box square) => new(_scale, new Point(square.Left, square.Lower) - new Point(_scale * _mat.At.X, _scale * _mat.At.Y));

    private IEnumerable<Element> Square(Point upperLeft)
    {
        var square = SquareAt(upperLeft);
        var placing = PlacingIn(square);
        return
        [
            new TextElement(_mat.Name, new(upperLeft.X, upperLeft.Y - 5), 6, FontWeight.Bold),
            new TextElement($"{_marks.Count} {(_marks.Count == 1 ? "mark" : "marks")}", new(square.Right, upperLeft.Y - 5), TextMm, Align: TextAlign.Right),
            .. Grid(square),
            new PlacedElement([.. new SeenLine(_plan.Pins.Pinned.Ring(0.5).Select(placing.On).ToList(), true, new(0.5)).In(square)], Point.Origin, 1, square),
            new PathElement(PathSteps.Rectangle(square), new(0.4)),
            .. Marks(placing, square),
        ];
    }

    /// <summary>The grid in the maker's units, heavier and figured every fifth centimetre or every second inch.</summary>
    private IEnumerable<Element> Grid(Box square)
    {
        var inches = _plan.Project.Units == LengthUnit.Inches;
        var (step, heavy) = inches ? (Length.FromInches(1), 2) : (Length.FromCentimetres(1), 5);
        var perFigure = inches ? 2.0 : _plan.Project.Units == LengthUnit.Millimetres ? 50 : 5;
        foreach (var isUpright in new[] { true, false })
        {
            var most = isUpright ? _plan.Mats.PitchX : _plan.Mats.PitchY;
            for (var i = 0; i * step.Millimetres <= most + 1e-6; i++)
            {
                var at = i * step.Millimetres * _scale;
                var (from, to) = isUpright
                    ? (new Point(square.Left + at, square.Lower), new Point(square.Left + at, square.Upper))
                    : (new Point(square.Left, square.Lower + at), new Point(square.Right, square.Lower + at));
                yield return new PathElement(PathSteps.Line(from, to), i % heavy == 0 ? Strong : Thin);
                if (i % heavy != 0)
                    continue;
                var figure = (i / heavy * perFigure).ToString("0", CultureInfo.InvariantCulture);
                yield return isUpright
                    ? new TextElement(figure, new(from.X, square.Lower - 3.4), 3, Align: TextAlign.Centre, Grey: 0.2)
                    : new TextElement(figure, new(square.Left - 1, from.Y - 1), 3, Align: TextAlign.Right, Grey: 0.2);
            }
        }
    }

    private IEnumerable<Element> Marks(FramePlacing placing, Box square)
    {
        var lastRound = _plan.Pins.Marks.Max(m => m.Round);
        var taken = new TakenPlaces();
        foreach (var mark in _marks)
            taken.Add(Box.About(placing.On(mark.At), 3.2, 3.2));
        foreach (var mark in _marks)
        {
            var at = placing.On(mark.At);
            yield return new PlacedElement(MarkForms.Of(mark.Round, lastRound).Content, at, 0.45);
            var text = mark.Number.ToString(CultureInfo.InvariantCulture);
            var box = new Box(0, 0, TextMeasure.AdvanceMm(text, NumberMm, FontWeight.Bold), NumberMm * TextMeasure.FigureHeight(FontWeight.Bold));
            var place = Places(at, mark.Outward, box).Where(b => square.Grown(-0.6).Holds(b) && taken.IsFree(b.Grown(0.25))).Select(b => (Box?)b).FirstOrDefault();
            if (place is not { } found)
                continue;
            taken.Add(found);
            yield return new PathElement(PathSteps.Rectangle(found.Grown(0.25)), null, new Fill(1));
            yield return new TextElement(text, new(found.Left, found.Lower), NumberMm, FontWeight.Bold);
        }
    }

    private static IEnumerable<Box> Places(Point at, Vector outward, Box box)
    {
        foreach (var far in new[] { 2.4, 4.5, 7 })
        {
            foreach (var turn in new[] { 0, 30, -30, 60, -60, 90, -90, 120, -120, 150, -150, 180 })
            {
                var direction = Affine.Turn(turn * Math.PI / 180).Map(outward);
                var off = far + (Math.Abs(direction.X) * box.Width / 2) + (Math.Abs(direction.Y) * box.Height / 2);
                yield return Box.About(at + (off * direction), box.Width, box.Height);
            }
        }
    }

    private IEnumerable<Element> List(double upper, double left)
    {
        var units = _plan.Project.Units;
        string Number(double mm) => LengthWords.Number(Length.FromMillimetres(mm), units);
        var columnWidth = (_width - ((ListColumns - 1) * BetweenMm)) / ListColumns;
        for (var column = 0; column < ListColumns; column++)
        {
            var x = left + (column * (columnWidth + BetweenMm));
            var list = _marks.Skip(column * ListRows).Take(ListRows).ToList();
            if (list.Count == 0)
                continue;
            var y = upper - RowMm + 1.2;
            foreach (var element in Row(x, columnWidth, y, ["No.", "round", "left", "lower"], FontWeight.Bold))
                yield return element;
            foreach (var mark in list)
            {
                y -= RowMm;
                var seat = _plan.Mats.Seats[mark.Number - 1];
                foreach (var element in Row(x, columnWidth, y, [mark.Number.ToString(CultureInfo.InvariantCulture), mark.Round.ToString(CultureInfo.InvariantCulture), Number(seat.OnMat.X), Number(seat.OnMat.Y)], FontWeight.Regular))
                    yield return element;
            }
        }
    }

    private static IEnumerable<Element> Row(double x, double width, double y, IReadOnlyList<string> cells, FontWeight weight)
    {
        double[] rights = [0.14, 0.41, 0.69, 0.98];
        for (var i = 0; i < cells.Count; i++)
            yield return new TextElement(cells[i], new(x + (rights[i] * width), y), TextMm, i == 0 ? FontWeight.Bold : weight, TextAlign.Right);
    }
}
