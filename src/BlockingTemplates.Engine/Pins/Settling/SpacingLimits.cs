namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>What the gaps between pins shall keep. Lengths in millimetres.</summary>
/// <param name="ScallopMm">Greatest scallop, above 0.</param>
/// <param name="LeastMm">Least gap, above 0.</param>
/// <param name="MostMm">Greatest gap; infinite where there is no cap.</param>
/// <param name="SlackMm">Gap where the cloth does not decide the line.</param>
internal readonly record struct SpacingLimits(double ScallopMm, double LeastMm, double MostMm, double SlackMm)
{
    /// <summary>A scallop this much over the greatest, as a share of it, still counts as kept.</summary>
    public const double Reading = 1e-3;

    /// <summary>The limits a maker asked for.</summary>
    public static SpacingLimits Of(PinSettings settings)
    {
        var most = settings.MaxSpacing?.Millimetres ?? double.PositiveInfinity;
        var least = settings.MinSpacing.Millimetres;
        return new(settings.Scallop.Millimetres, least, most, Math.Clamp(PinSettings.UsualSpacing.Millimetres, least, Math.Max(least, most)));
    }

    /// <summary>Whether the scallop of a gap is kept; a gap whose line is not determined, or whose marks stand where the maker said, has none to keep.</summary>
    public bool Keeps(MarkGap gap) => gap.IsSet || gap.Determined == false || Math.Abs(gap.ScallopMm) <= ScallopMm * (1 + Reading);
}
