using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using System.Text.Json.Serialization;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Sections;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Projects;

// The form of a project file. Names known to the reader and the JSON schema both come from these records. They are never
// filled: the reader works on the file's own places, to be able to say where each problem stands.
internal sealed record ProjectFile
{
    [JsonPropertyName("$schema"), Description("Where this schema stands.")]
    public string? Schema { get; init; }

    [Description("Version of the file's form: 1."), Range(Limits.Format, Limits.Format)]
    public int? Format { get; init; }

    [Description("Printed on the cover."), AtMost(Limits.LongestTitle)]
    public string? Title { get; init; }

    [Description("Unit of lengths that name none; mm unless said.")]
    public LengthUnit? Units { get; init; }

    [Description("The piece, finished and as it came off the needles or hook.")]
    public required PieceSection Piece { get; init; }

    [Description("The cloth.")]
    public FabricSection? Fabric { get; init; }

    [Description("The pins.")]
    public PinsSection? Pins { get; init; }

    [Description("The foam mats.")]
    public MatsSection? Mats { get; init; }

    [Description("The printed sheets.")]
    public SheetsSection? Sheets { get; init; }

    [Description("How the shape is set.")]
    public SetSection? Set { get; init; }

    [Description("Reserved for a part that has not arrived yet: fringe and tassels.")]
    public JsonElement? Fringe { get; init; }

    [Description("Free text, printed on the cover."), AtMost(Limits.LongestNotes)]
    public string? Notes { get; init; }

    [Description("The blocking wires.")]
    public WiresSection? Wires { get; init; }

    [Description("The comb pins.")]
    public CombsSection? Combs { get; init; }

    [Description("Several sizes of the piece, each planned by itself: what each has instead of the piece's own."), AtMost(Limits.MostSizes)]
    public IReadOnlyList<SizeSection>? Sizes { get; init; }

    [Description("Seconds after which the computation of the cloth ends with the best found so far; none unless said."), Range(Limits.LeastSeconds, Limits.MostSeconds)]
    public double? TimeLimit { get; init; }
}

internal sealed record FabricSection
{
    [Description("The kind of cloth.")]
    public FabricKind? Kind { get; init; }

    [Description("Its fibre, such as wool."), AtMost(Limits.LongestName)]
    public string? Fibre { get; init; }

    [Description("Degrees from x to the rows, in the unblocked outline."), Range(-Limits.MostGrain, Limits.MostGrain)]
    public double? Grain { get; init; }

    [Description("Unblocked size of one stitch, along and across the rows.")]
    public LengthPair? Stitch { get; init; }

    [Description("How the piece was when measured.")]
    public Dampness? Measured { get; init; }

    [Description("Pinned length / length after unpinning - 1, as a fraction.")]
    public SpringBackValue? SpringBack { get; init; }

    [Description("A swatch measured before and after blocking.")]
    public SwatchSection? Swatch { get; init; }

    [Description("Three damp strips pulled by one weight: along the rows, across them, and slanted by 45 degrees.")]
    public StripsSection? Strips { get; init; }

    [Description("Wet length / dry length - 1, as a fraction: negative where the cloth closes up. Used where the piece was measured dry.")]
    public WetChangeValue? WetChange { get; init; }
}

internal sealed record SwatchSection
{
    [Description("As it came off the needles or hook: [along, across] the rows.")]
    public LengthPair? Before { get; init; }

    [Description("Once dry and unpinned: [along, across] the rows.")]
    public LengthPair? After { get; init; }

    [Description("While pinned, if that was measured: [along, across] the rows.")]
    public LengthPair? Pinned { get; init; }
}

internal sealed record StripsSection
{
    [Description("Width of each strip without the weight.")]
    public LengthValue? Width { get; init; }

    [Description("The weight in grams, clip and all."), Range(Limits.LeastGrams, Limits.MostGrams)]
    public double? Weight { get; init; }

    [Description("How far off a reading of the tape may be; 1 mm unless said.")]
    public LengthValue? Reading { get; init; }

    [Description("The strip along the rows.")]
    public StripSection? Along { get; init; }

    [Description("The strip across the rows.")]
    public StripSection? Across { get; init; }

    [Description("The strip at 45 degrees to the rows.")]
    public StripSection? Slanted { get; init; }
}

internal sealed record StripSection
{
    [Description("Length between two marks: [without, with] the weight.")]
    public LengthPair? Length { get; init; }

    [Description("Width half-way with the weight; needed of the strip along the rows.")]
    public LengthValue? Width { get; init; }
}

internal sealed record SpringBackSection
{
    [Description("Along the rows."), Range(Limits.LeastSpringBack, Limits.MostSpringBack)]
    public double? Along { get; init; }

    [Description("Across the rows."), Range(Limits.LeastSpringBack, Limits.MostSpringBack)]
    public double? Across { get; init; }
}

internal sealed record PinsSection
{
    [Description("Greatest distance of the free edge from the outline between pins; 0.5 cm unless said.")]
    public LengthValue? Scallop { get; init; }

    [Description("Distance between pins; 5 cm unless said.")]
    public LengthValue? Spacing { get; init; }

    [Description("Least distance between pins; 1.5 cm unless said.")]
    public LengthValue? MinSpacing { get; init; }

    [Description("Greatest distance between pins; 8 cm unless said, null for no cap.")]
    public LengthValue? MaxSpacing { get; init; }

    [Description("A corner's name, an edge's name, middle of EDGE, or none."), AtMost(Limits.LongestName * 2)]
    public string? Anchor { get; init; }

    [Description("Pins at hand."), Range(0, Limits.MostCounted)]
    public int? Owned { get; init; }
}

internal sealed record MatsSection
{
    [Description("What one more mat adds to a joined row, or [width, height]; 30 cm unless said.")]
    public MatSizeValue? Size { get; init; }

    [Description("Mat wanted outside the outline; 5 cm unless said.")]
    public LengthValue? Border { get; init; }

    [Description("How far a pin should stay from a seam; 0.8 cm unless said.")]
    public LengthValue? SeamClearance { get; init; }

    [Description("Allowed turns of the mats under the piece: [0, 90], or free for every degree.")]
    public TurnsValue? Turns { get; init; }

    [Description("Mats at hand."), Range(0, Limits.MostCounted)]
    public int? Owned { get; init; }

    [Description("The floor that the joined mats have to fit on, either way round: [width, height], or one length for a square.")]
    public MatSizeValue? Floor { get; init; }
}

internal sealed record SheetsSection
{
    [Description("A paper's name, or several: A4 unless said.")]
    public PaperValue? Paper { get; init; }

    [Description("Unprinted margin; 1.2 cm unless said.")]
    public LengthValue? Margin { get; init; }

    [Description("How far one sheet lies over the next; 1.5 cm unless said.")]
    public LengthValue? Overlap { get; init; }

    [Description("How the taped guide is used.")]
    public GuideUse? Use { get; init; }

    [Description("True prints one half of a symmetric piece only, to be turned over for the other.")]
    public bool? Half { get; init; }

    [Description("True prints every sheet of the page grid, those inside the piece too.")]
    public bool? All { get; init; }

    [Description("What the printer check's bars measured, along the paper's short and long side.")]
    public LengthPair? Measured { get; init; }
}

internal sealed record SetSection
{
    [Description("How the shape is set.")]
    public SetMethod? Method { get; init; }

    [Description("What the care label says of heat.")]
    public CareLabel? Label { get; init; }
}
