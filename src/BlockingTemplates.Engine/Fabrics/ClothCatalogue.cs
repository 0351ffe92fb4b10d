using System.Globalization;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How much each kind of cloth gives, one line each in <c>shared/cloths.csv</c>.</summary>
public static class ClothCatalogue
{
    private const string Resource = "cloths.csv";
    private const int Columns = 12;

    private static readonly Lazy<IReadOnlyList<ClothKind>> Lines = new(ReadLines);

    /// <summary>All of them, in the order of the file; the last one is for cloth of which nothing was said.</summary>
    public static IReadOnlyList<ClothKind> All => Lines.Value;

    /// <summary>The line of a kind, or of cloth of which nothing was said.</summary>
    public static ClothKind Of(FabricKind? kind) => All.First(c => c.Kind == kind);

    private static List<ClothKind> ReadLines()
    {
        using var stream = typeof(ClothCatalogue).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not built in.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return [.. lines.Where(l => l[0] != '#').Skip(1).Select(Read)];
    }

    private static ClothKind Read(string line)
    {
        var cells = line.Split(',');
        if (cells.Length != Columns)
            throw new InvalidOperationException($"{Resource}: a line has {cells.Length} cells: {line}");
        return new(
            cells[0] == "any" ? null : Enum.Parse<FabricKind>(cells[0], ignoreCase: true),
            Three(cells, 1),
            Three(cells, 4),
            Three(cells, 7),
            cells[10] switch
            {
                "measured" => true,
                "assumed" => false,
                _ => throw new InvalidOperationException($"{Resource}: \"{cells[10]}\" is neither measured nor assumed."),
            },
            cells[11]);
    }

    private static Spread Three(string[] cells, int at) => new(Number(cells[at]), Number(cells[at + 1]), Number(cells[at + 2]));

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
