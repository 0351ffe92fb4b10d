using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.MatCharts;

/// <summary>One mark on its mat for a screen beside the mats: the mat's square with its marks, the mark ringed, its two distances drawn.</summary>
public static class MatCloseUp
{
    private const double WidthMm = 90;
    private const double BorderMm = 1.5;

    /// <summary>The picture of a mark.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">The mark's number, from 1; others throw.</param>
    public static Page Draw(Plan plan, int number)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var seat = plan.Mats.Seats[number - 1];
        var picture = new MatPicture(plan, plan.Mats.Mats.First(m => m.Name == seat.Mat), WidthMm);
        return new(
            picture.SquareWidthMm + (2 * BorderMm),
            picture.SquareHeightMm + (2 * BorderMm),
            [.. picture.CloseUp(new Point(BorderMm, picture.SquareHeightMm + BorderMm), number)],
            "mat");
    }
}
