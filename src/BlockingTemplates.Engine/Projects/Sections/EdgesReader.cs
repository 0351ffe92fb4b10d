using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>piece.edges</c>.</summary>
internal static class EdgesReader
{
    /// <summary>What is said of single edges, by name.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="names">The piece's edges, or null where they are not known.</param>
    /// <param name="reading">Takes problems.</param>
    public static IReadOnlyDictionary<string, EdgeTreatment> Read(JsonPlace? place, IReadOnlyList<string>? names, FileReading reading)
    {
        var edges = new Dictionary<string, EdgeTreatment>();
        if (place is null || !reading.IsObject(place, "edges by name", "Write { \"top\": { \"count\": 180 } }."))
            return edges;
        var known = names?.ToHashSet();
        foreach (var item in place.Items)
        {
            if (known?.Contains(item.Name!) == false)
            {
                reading.Unknown(item, names!, "is no edge of this piece");
                continue;
            }

            var section = Section.Open<EdgeSection>(item, "what is said of an edge", reading);
            edges.Add(item.Name!, EdgeReader.Read(item.Name!, section, reading));
        }

        return edges;
    }
}
