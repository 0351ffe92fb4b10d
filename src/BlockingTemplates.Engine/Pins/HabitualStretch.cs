using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Engine.Pins;

/// <summary>How far edges of a kind of fabric are habitually stretched in blocking (common practice, no source).</summary>
public static class HabitualStretch
{
    /// <summary>Greatest habitual stretch of an edge of a fabric: 0.3 is 30 %.</summary>
    public static double Most(FabricKind kind) => kind switch
    {
        FabricKind.Lace => 0.50,
        FabricKind.Mesh => 0.40,
        FabricKind.Garter => 0.25,
        FabricKind.Plain => 0.15,
        FabricKind.Rib => 0.05,
        FabricKind.Cable => 0.08,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
