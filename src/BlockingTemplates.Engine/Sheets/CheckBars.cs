namespace BlockingTemplates.Engine.Sheets;

/// <summary>Lengths of the printer check's bars, in millimetres: 150 along the short side and 240 along the long one, less on small papers.</summary>
/// <param name="ShortMm">Along the paper's short side.</param>
/// <param name="LongMm">Along the paper's long side.</param>
public readonly record struct CheckBars(double ShortMm, double LongMm)
{
    /// <summary>Length of the piece of a roll that the check is printed on.</summary>
    public const double RollPieceMm = 300;

    private const double MarginMm = 15;

    /// <summary>The bars that fit on a paper: whole centimetres.</summary>
    public static CheckBars Of(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return new(Fitting(150, paper.Short.Millimetres), Fitting(240, paper.IsRoll ? RollPieceMm : paper.Long.Millimetres));
    }

    private static double Fitting(double wanted, double side) => Math.Min(wanted, Math.Floor((side - (2 * MarginMm)) / 10) * 10);
}
