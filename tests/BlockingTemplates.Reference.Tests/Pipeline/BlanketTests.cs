using BlockingTemplates.Engine;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Pipeline;

// A square blanket of 4 m on A4: with the margins and overlap that stand unless given, a sheet's own window is 258 mm by
// 171 mm, so the field has 16 columns of 24 rows, 384 sheets (24 of 16 upright). 16 x 258 = 4128 and 24 x 171 = 4104 mm
// leave room for the blanket's own sides; one column or row fewer, 3870 or 3933 mm, is too short. Without the inside only
// the rim of the field is printed: 2 x 16 + 2 x (24 - 2) = 76 sheets, which hang together without joining sheets.
public class BlanketTests
{
    private const double SideMm = 4000;

    private static readonly Lazy<Plan> Rim = new(() => Blanket(all: false));
    private static readonly Lazy<Plan> All = new(() => Blanket(all: true));

    [Fact]
    public void The_window_of_a_sheet_of_A4_makes_a_field_of_16_by_24()
    {
        var guide = All.Value.Guides[0];
        var (x, y) = (guide.Layout.PitchX, guide.Layout.PitchY);
        Assert.Equal((258, 171), (Math.Round(Math.Max(x, y), 9), Math.Round(Math.Min(x, y), 9)));
        Assert.Equal((16, 24), ((int)Math.Ceiling(SideMm / 258), (int)Math.Ceiling(SideMm / 171)));
    }

    [Fact]
    public void A_blanket_of_4_m_takes_the_76_sheets_of_its_rim()
    {
        var layout = Rim.Value.Guides[0].Layout;
        Assert.Equal((76, 0), (layout.Sheets.Count, layout.JoiningCount));
        var (rows, columns) = (layout.Sheets.Max(s => s.Row), layout.Sheets.Max(s => s.Column));
        Assert.Equal(384, rows * columns);
        Assert.All(layout.Sheets, s => Assert.True(s.Row == 1 || s.Row == rows || s.Column == 1 || s.Column == columns, s.Name));
    }

    [Fact]
    public void With_all_sheets_the_whole_field_of_384_is_printed()
    {
        var layout = All.Value.Guides[0].Layout;
        Assert.Equal(384, layout.Sheets.Count);
        Assert.Equal(384, layout.Sheets.Select(s => (s.Row, s.Column)).Distinct().Count());
    }

    private static Plan Blanket(bool all) => Planned.Of($$"""
        { "format": 1, "units": "mm", "title": "Blanket (invented example)",
          "piece": { "shape": "rectangle", "finished": { "width": 4000, "length": 4000 } },
          "pins": { "spacing": 50 },
          "sheets": { "paper": "A4", "all": {{(all ? "true" : "false")}} } }
        """);
}
