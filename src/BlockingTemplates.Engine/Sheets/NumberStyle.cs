namespace BlockingTemplates.Engine.Sheets;

/// <summary>How the numbers of marks are set on the guide.</summary>
/// <param name="WidthOverHeight">Width of a number over the height of its figures, in the font it is drawn in.</param>
public sealed record NumberStyle(Func<string, double> WidthOverHeight)
{
    /// <summary>Heights of figures that are tried, largest first, in millimetres.</summary>
    public IReadOnlyList<double> HeightsMm { get; init; } = [6, 5, 4];

    /// <summary>How far a number outside the outline keeps from it, in millimetres.</summary>
    public double ClearMm { get; init; } = 8;

    /// <summary>Room below the figures for the bar that tells 6 from 9, over their height.</summary>
    public double BarOverHeight { get; init; } = 0.35;

    /// <summary>Height of the figures of the partner's number below, over those of the number.</summary>
    public double PartnerOverHeight { get; init; } = 1;

    /// <summary>White kept round a number, in millimetres.</summary>
    public double PadMm { get; init; } = 0.8;

    /// <summary>Width and height of the box of a number, in millimetres.</summary>
    /// <param name="text">The number.</param>
    /// <param name="partner">The number of the mark's partner, written below it on a half guide, or null.</param>
    /// <param name="figureHeightMm">Height of the number's figures.</param>
    public (double Width, double Height) Size(string text, string? partner, double figureHeightMm)
    {
        double width = WidthOverHeight(text) * figureHeightMm, line = (1 + BarOverHeight) * figureHeightMm;
        var (below, more) = partner is null ? (0, 0) : (WidthOverHeight(partner) * PartnerOverHeight * figureHeightMm, PartnerOverHeight * line);
        return (Math.Max(width, below) + (2 * PadMm), line + more + (2 * PadMm));
    }
}
