using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using BlockingTemplates.Engine.Pins.Wires;
using BlockingTemplates.Engine.Projects.Sections;

namespace BlockingTemplates.Engine.Projects;

// The parts of a project file's form that are about wires, combs and wet cloth; see ProjectFile.
internal sealed record WiresSection
{
    [Description("Stiff: a straight rod. Flexible: spring-tempered, for curves. Stiff unless said.")]
    public WireKind? Kind { get; init; }

    [Description("Diameter of a wire; 1.5 mm for stiff ones and 1 mm for flexible ones unless said.")]
    public LengthValue? Diameter { get; init; }

    [Description("Wires at hand, by length."), AtMost(Limits.MostStocks)]
    public IReadOnlyList<WireStockSection>? Owned { get; init; }

    [Description("How far one wire lies beside the next on the same edge; 5 cm unless said.")]
    public LengthValue? Overlap { get; init; }

    [Description("The wire goes through every so manieth stitch or row; 1 unless said."), Range(1, Limits.MostSkipped)]
    public int? Every { get; init; }
}

internal sealed record WireStockSection
{
    [Description("Length of these wires.")]
    public required LengthValue Length { get; init; }

    [Description("How many there are; 1 unless said."), Range(0, Limits.MostCounted)]
    public int? Count { get; init; }

    [Description("Stiff or flexible; as in wires.kind unless said.")]
    public WireKind? Kind { get; init; }

    [Description("Their diameter; as in wires.diameter unless said.")]
    public LengthValue? Diameter { get; init; }
}

internal sealed record CombsSection
{
    [Description("Prongs of one comb; 8 unless said."), Range(Limits.FewestProngs, Limits.MostProngs)]
    public int? Prongs { get; init; }

    [Description("From its first prong to its last; 9 cm unless said.")]
    public LengthValue? Length { get; init; }

    [Description("Combs at hand."), Range(0, Limits.MostCounted)]
    public int? Owned { get; init; }
}

internal sealed record WetChangeSection
{
    [Description("Along the rows."), Range(Limits.LeastWetChange, Limits.MostWetChange)]
    public double? Along { get; init; }

    [Description("Across the rows."), Range(Limits.LeastWetChange, Limits.MostWetChange)]
    public double? Across { get; init; }
}
