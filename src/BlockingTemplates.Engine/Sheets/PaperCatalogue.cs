using System.Globalization;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>The sizes of paper known by name, read from the catalogue shipped with the program.</summary>
/// <remarks>
/// Sizes stand as the standards give them, in millimetres or inches; each line names its source. JIS B and ISO B differ
/// and are kept apart by name.
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

    /// <summary>The known name nearest to one that is not known: fewest letters to put in, take out or change.</summary>
    public static string NearestName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Papers.MinBy(p => Changes(p.Name.ToUpperInvariant(), name.Trim().ToUpperInvariant()))!.Name;
    }

    /// <summary>Distance of Levenshtein (Soviet Physics Doklady 10, 1966, 707), by rows.</summary>
    private static int Changes(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var before = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var changed = before + (from[i - 1] == to[j - 1] ? 0 : 1);
                before = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
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
            papers.Add(new(cells[0], Side(cells[1], cells[3]), Side(cells[2], cells[3])));
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
