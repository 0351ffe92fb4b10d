using System.Globalization;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The sizes of paper known by name, read from the catalogue shipped with the program.</summary>
/// <remarks>
/// Sizes stand as the standards give them, in millimetres or inches; each line names its source. JIS B and ISO B differ
/// and are kept apart by name. A roll has a width and no length.
/// </remarks>
public static class PaperCatalogue
{
    private static readonly IReadOnlyList<Paper> Papers = Read();

    /// <summary>All papers, in the order of the catalogue.</summary>
    public static IReadOnlyList<Paper> All => Papers;

    /// <summary>The paper of a name, capitals or not, or null.</summary>
    public static Paper? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Papers.FirstOrDefault(p => string.Equals(p.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
    }

    private static List<Paper> Read()
    {
        using var stream = typeof(PaperCatalogue).Assembly.GetManifestResourceStream("papers.csv")
            ?? throw new InvalidOperationException("The catalogue of papers is missing from the program.");
        using var reader = new StreamReader(stream);
        reader.ReadLine();
        var papers = new List<Paper>();
        while (reader.ReadLine() is { } line)
        {
            var cells = line.Split(',');
            var width = Side(cells[1], cells[3]);
            papers.Add(cells[2].Length == 0
                ? new(cells[0], width, Paper.MostLength) { IsRoll = true }
                : new(cells[0], width, Side(cells[2], cells[3])));
        }

        return papers;
    }

    private static Length Side(string figure, string unit)
    {
        var value = double.Parse(figure, CultureInfo.InvariantCulture);
        return unit switch
        {
            "mm" => Length.FromMillimetres(value),
            "in" => Length.FromInches(value),
            _ => throw new InvalidOperationException($"The catalogue of papers has no unit {unit}."),
        };
    }
}
