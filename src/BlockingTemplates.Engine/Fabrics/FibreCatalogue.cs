using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The fibres the tool knows, one line each in <c>shared/fibres.csv</c>.</summary>
public static class FibreCatalogue
{
    private const string Resource = "fibres.csv";
    private const int Columns = 8;

    private static readonly Lazy<IReadOnlyList<Fibre>> Lines = new(ReadLines);

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Fibre> All => Lines.Value;

    /// <summary>The fibre of a name, in any case, or null.</summary>
    public static Fibre? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(f => f.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The known name nearest to an unknown one, or null.</summary>
    public static string? Nearest(string name) => NearestName.Of(name, All.Select(f => f.Name));

    /// <summary>A fibre of which only the name is known, taken to bear as little as the most delicate one.</summary>
    public static Fibre MostDelicate(string name) => new(
        name,
        FibreFamily.Mixed,
        All.All(f => f.TakesWetBlock),
        All.All(f => f.SteamAllowed),
        All.Any(f => f.HeatSensitive),
        All.Any(f => f.GrowsWhenWet),
        All.Any(f => f.WeakerWhenWet),
        "the most delicate of the catalogue in each respect");

    private static List<Fibre> ReadLines()
    {
        using var stream = typeof(FibreCatalogue).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not built in.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return [.. lines.Where(l => l[0] != '#').Skip(1).Select(Read)];
    }

    private static Fibre Read(string line)
    {
        var cells = line.Split(',');
        return cells.Length == Columns
            ? new(cells[0], Enum.Parse<FibreFamily>(cells[1], ignoreCase: true), Yes(cells[2]), Yes(cells[3]), Yes(cells[4]), Yes(cells[5]), Yes(cells[6]), cells[7])
            : throw new InvalidOperationException($"{Resource}: a line has {cells.Length} cells: {line}");
    }

    private static bool Yes(string cell) => cell switch
    {
        "yes" => true,
        "no" => false,
        _ => throw new InvalidOperationException($"{Resource}: \"{cell}\" is neither yes nor no."),
    };
}
