namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How much more a piece is pinned than it keeps: pinned length / length after unpinning - 1.</summary>
/// <param name="Along">Along the rows; a fraction, negative where the cloth grows after unpinning.</param>
/// <param name="Across">Across the rows; likewise.</param>
public readonly record struct SpringBack(double Along, double Across)
{
    /// <summary>Whether it is none at all.</summary>
    public bool IsNone => Along == 0 && Across == 0;
}
