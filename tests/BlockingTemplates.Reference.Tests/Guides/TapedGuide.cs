using System.Globalization;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Guides;

// The sheets of a printed guide, laid together by nothing but what is printed on them: the crosses on the cut lines.
internal sealed class TapedGuide
{
    private const double JointCrossMm = 8;
    private const double MarkCrossMm = 10;
    private const double EdgeLineMm = 0.15;
    private const double SizeToleranceMm = 0.4; // crosses grow with a corrected guide
    private readonly Func<Point, Point> _printer;

    // The printer: what becomes of a place of the page on paper.
    public TapedGuide(IReadOnlyList<PaperPage> pages, Func<Point, Point>? printer = null)
    {
        _printer = printer ?? (p => p);
        Sheets = [.. pages.Where(p => TryPlace(p.Label, out _)).Select(p => new Taped(p, PlaceOf(p.Label)))];
        Lay();
    }

    public IReadOnlyList<Taped> Sheets { get; }

    // Greatest distance between two halves of a cross once the sheets are laid, over all joints.
    public double WorstJointMm { get; private set; }

    public int Joints { get; private set; }

    // Every mark's cross seen on any sheet's print, in the taped guide: one place for all its images.
    public IReadOnlyList<Point> Marks()
    {
        var places = new List<Point>();
        foreach (var sheet in Sheets)
        {
            foreach (var cross in Crosses(sheet.Page, MarkCrossMm).Where(c => sheet.Print.Holds(c)))
            {
                var at = Place(sheet, cross);
                if (!places.Exists(p => p.DistanceTo(at) < 0.1))
                    places.Add(at);
            }
        }

        return places;
    }

    public static IEnumerable<Point> MarkCrosses(Taped sheet) => Crosses(sheet.Page, MarkCrossMm);

    public Point Place(Taped sheet, Point onPage) => _printer(onPage) + sheet.Shift;

    public Box Place(Taped sheet, Box onPage)
    {
        Point lower = Place(sheet, new Point(onPage.Left, onPage.Lower)), upper = Place(sheet, new Point(onPage.Right, onPage.Upper));
        return new(lower.X, lower.Y, upper.X, upper.Y);
    }

    // The paper of a sheet after trimming at its dashed lines.
    public Box Trimmed(Taped sheet)
    {
        var (left, lower) = (CutLeft(sheet.Page), CutLower(sheet.Page));
        return Place(sheet, sheet.Page.Paper with { Left = left ?? 0, Lower = lower ?? 0 });
    }

    // The first sheet stays; the others are laid to a neighbour that lies already, breadth first.
    private void Lay()
    {
        var laid = new Queue<Taped>([Sheets[0]]);
        Sheets[0].IsLaid = true;
        while (laid.TryDequeue(out var sheet))
        {
            foreach (var (rows, columns) in new[] { (0, 1), (0, -1), (1, 0), (-1, 0) })
            {
                if (Sheets.FirstOrDefault(s => s.Place == (sheet.Place.Row + rows, sheet.Place.Column + columns)) is not { } next)
                    continue;
                var (below, over) = rows + columns > 0 ? (sheet, next) : (next, sheet);
                var (under, upper) = rows == 0 ? (OnEdge(below.Page, true), OnCut(over.Page, true)) : (OnEdge(below.Page, false), OnCut(over.Page, false));
                Assert.True(under.Count >= 2 && under.Count == upper.Count, $"{below.Page.Label} shows {under.Count} crosses of its joint with {over.Page.Label}, which shows {upper.Count}.");
                var shifts = under.Zip(upper, (u, o) => _printer(u) - _printer(o)).ToList();
                var overShift = new Vector(shifts.Average(s => s.X), shifts.Average(s => s.Y));
                if (!next.IsLaid)
                {
                    next.Shift = next == over ? below.Shift + overShift : over.Shift - overShift;
                    next.IsLaid = true;
                    laid.Enqueue(next);
                }

                WorstJointMm = Math.Max(WorstJointMm, under.Zip(upper, (u, o) => Place(below, u).DistanceTo(Place(over, o))).Max());
                Joints++;
            }
        }

        Assert.All(Sheets, s => Assert.True(s.IsLaid, $"{s.Page.Label} hangs together with no other sheet."));
    }

    private static List<Point> OnCut(PaperPage page, bool upright) => On(page, upright, (upright ? CutLeft(page) : CutLower(page)) ?? throw new InvalidOperationException($"{page.Label} has no line to cut at."));

    // On the sheet below, the thin whole line where the next one is laid.
    private static List<Point> OnEdge(PaperPage page, bool upright)
    {
        var lines = Long(page, upright).Where(l => !l.IsDashed && Math.Abs(l.WidthMm - EdgeLineMm) < 0.01).ToList();
        return On(page, upright, upright ? Assert.Single(lines).From.X : Assert.Single(lines).From.Y);
    }

    private static List<Point> On(PaperPage page, bool upright, double line) =>
        [.. Crosses(page, JointCrossMm).Where(c => Math.Abs((upright ? c.X : c.Y) - line) < 0.02).OrderBy(c => upright ? c.Y : c.X)];

    private static double? CutLeft(PaperPage page) => Long(page, true).FirstOrDefault(l => l.IsDashed && l.WidthMm < 0.3)?.From.X;

    private static double? CutLower(PaperPage page) => Long(page, false).FirstOrDefault(l => l.IsDashed && l.WidthMm < 0.3)?.From.Y;

    private static IEnumerable<PaperLine> Long(PaperPage page, bool upright)
    {
        // No other line of so little width runs over half the page.
        var most = upright ? page.Paper.Height : page.Paper.Width;
        return page.Lines.Where(l => (upright ? l.IsUpright : l.IsLevel) && l.LengthMm > most / 2);
    }

    private static IEnumerable<Point> Crosses(PaperPage page, double size) => page.Crosses.Where(c => Math.Abs(c.SizeMm - size) < SizeToleranceMm).Select(c => c.At);

    private static bool TryPlace(string label, out (int Row, int Column) place)
    {
        place = default;
        var parts = label.Split('-');
        if (parts.Length != 2 || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var row) || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var column))
            return false;
        place = (row, column);
        return true;
    }

    private static (int Row, int Column) PlaceOf(string label) => TryPlace(label, out var place) ? place : throw new ArgumentException($"{label} is no sheet.", nameof(label));

    // A sheet and where it comes to lie.
    internal sealed class Taped(PaperPage page, (int Row, int Column) place)
    {
        private const double MarginMm = 12; // the default of the project file

        public PaperPage Page { get; } = page;

        public (int Row, int Column) Place { get; } = place;

        public Vector Shift { get; set; }

        public bool IsLaid { get; set; }

        public Box Print => Page.Paper.Grown(-MarginMm + 0.01);
    }
}
