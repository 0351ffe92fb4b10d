using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Three strips of one width, cut or worked along the rows, across them and slanted by 45 degrees, pulled by one weight.</summary>
/// <param name="Width">Width of each strip without the weight.</param>
/// <param name="Grams">The weight.</param>
/// <param name="Along">The strip along the rows; its width while pulled is needed.</param>
/// <param name="Across">The strip across the rows; its width while pulled is used where given.</param>
/// <param name="Slanted">The strip at 45 degrees to the rows.</param>
/// <param name="Reading">How far off a reading of the tape may be.</param>
public sealed record StripTest(Length Width, double Grams, PulledStrip Along, PulledStrip Across, PulledStrip Slanted, Length Reading)
{
    /// <summary>Newtons that a gram weighs by standard gravity (3rd General Conference on Weights and Measures, 1901).</summary>
    private const double NewtonsPerGram = 9.80665e-3;

    /// <summary>The weight on each strip, in newtons per metre of its width.</summary>
    public double Pull => Grams * NewtonsPerGram / (Width.Millimetres / 1000);
}
