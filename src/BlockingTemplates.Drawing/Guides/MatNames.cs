using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Faint names in the corners of the mats, where a sheet has room for them.</summary>
internal sealed class MatNames
{
    private const double SizeMm = 6;
    private const double FromSideMm = 5;
    private readonly List<(Sheet Sheet, TextElement Text)> _names = [];

    public MatNames(MatLayout mats, SheetLayout sheets, TakenPlaces taken)
    {
        foreach (var mat in mats.Mats)
        {
            double width = TextMeasure.AdvanceMm(mat.Name, SizeMm), height = SizeMm;
            foreach (var (right, upper) in new[] { (false, false), (true, false), (false, true), (true, true) })
            {
                var left = mat.At.X + (right ? mats.PitchX - FromSideMm - width : FromSideMm);
                var lower = mat.At.Y + (upper ? mats.PitchY - FromSideMm - height : FromSideMm);
                var box = new Box(left, lower, left + width, lower + height);
                if (sheets.SheetHolding(box) is not { } sheet || !taken.IsFree(box.Grown(1)))
                    continue;
                taken.Add(box);
                _names.Add((sheet, new(mat.Name, new(left, lower + (0.2 * SizeMm)), SizeMm, Grey: 0.6)));
            }
        }
    }

    public IEnumerable<Element> On(Sheet sheet) => _names.Where(n => n.Sheet == sheet).Select(n => n.Text);
}
