namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How cloth changes from dry to wet: wet length / dry length - 1.</summary>
/// <remarks>
/// Plain knitted wool closes up: 5.0 to 5.3 courses and 3.8 to 4.1 wales for one loop length a centimetre, dry relaxed to
/// wet relaxed (D. L. Munden, J. Text. Inst. 50 (1959) T448-T471; from memory, high confidence), and to 5.5 and 4.2 once it
/// was also tumbled (J. J. F. Knapton and others, Text. Res. J. 38 (1968) 999 and 1013; the first figures seen, the rest from memory).
/// </remarks>
/// <param name="Along">Along the rows; a fraction, negative where it closes up.</param>
/// <param name="Across">Across the rows; likewise.</param>
public readonly record struct WetChange(double Along, double Across)
{
    /// <summary>Plain wool once wetted: 7.3 % along the rows, 5.7 % across.</summary>
    public static WetChange PlainWoolWetted { get; } = new((3.8 / 4.1) - 1, (5.0 / 5.3) - 1);

    /// <summary>Plain wool once wetted, agitated and tumbled: 9.5 % along the rows, 9.1 % across.</summary>
    public static WetChange PlainWoolWashed { get; } = new((3.8 / 4.2) - 1, (5.0 / 5.5) - 1);

    /// <summary>Whether it is none at all.</summary>
    public bool IsNone => Along == 0 && Across == 0;
}
