using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Files;
using BlockingTemplates.Engine.Projects.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads an outline whose line stands in a file beside the project file.</summary>
internal sealed class DrawnOutlineReader(FileReading reading, string path)
{
    /// <summary>The outline's lines, corners and edges, or null after a problem.</summary>
    /// <param name="fileAt">Where the file is named.</param>
    /// <param name="pathId">The id of the path asked for, or null.</param>
    /// <param name="cornersAt">Where the maker names corners, or null.</param>
    /// <param name="corners">The corners named, or null: they are found.</param>
    /// <param name="edgesAt">Where the maker names edges, or null.</param>
    /// <param name="edges">The edges named, or null.</param>
    public (IReadOnlyList<EdgeCurve> Lines, List<CornerEntry> Corners, List<EdgeEntry> Edges)? Read(
        JsonPlace fileAt, string? pathId, JsonPlace? cornersAt, List<CornerEntry>? corners, JsonPlace? edgesAt, List<EdgeEntry>? edges)
    {
        if (Ring(fileAt, pathId) is not { } ring)
            return null;
        List<int> starts;
        if (corners is null)
            (starts, corners) = Found(ring, fileAt);
        else if (Named(ring, cornersAt!, corners) is { } named)
            starts = named;
        else
            return null;

        if (edges is not null && edges.Count != starts.Count)
        {
            reading.Problem(edgesAt!, $"The line has {starts.Count} corners but {edges.Count} edges are named.", "Name one edge for each corner, edge i from corner i to the next one, or none.");
            return null;
        }

        for (var i = 0; i < edges?.Count; i++)
        {
            if (edges[i] is { Bow: null, Offsets: null, Points: null })
                continue;
            reading.Problem(edgesAt!.Items[i], "This edge has a line of its own beside the file's.", "Keep only its name, or leave the file out.");
            return null;
        }

        var n = ring.Count;
        var lines = starts.Select((s, i) =>
        {
            var count = ((starts[(i + 1) % starts.Count] - s + n - 1) % n) + 1;
            return JoinedEdge.Of([.. Enumerable.Range(s, count).Select(k => ring[k % n])]);
        });
        return ([.. lines], corners, edges ?? [.. starts.Select(_ => new EdgeEntry())]);
    }

    private IReadOnlyList<EdgeCurve>? Ring(JsonPlace fileAt, string? pathId)
    {
        if (reading.Text(fileAt, Limits.LongestFileName) is not { } name)
            return null;
        var isSvg = name.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
        if (!FileBeside.IsPlainName(name) || !(isSvg || name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)))
        {
            reading.Problem(fileAt, $"{fileAt.Words} is not the plain name of an SVG or CSV file.", "Put the file beside the project file and write its name alone, such as \"shawl.svg\" or \"shawl.csv\".");
            return null;
        }

        if (reading.Beside is not { } beside || beside(name) is not { } file)
        {
            reading.Problem(fileAt, "There is no folder to read the file from.", "Save the project as a file and put the drawing beside it.");
            return null;
        }

        if (file.Bytes is not { } bytes || bytes.Length > FileBeside.MostBytes)
        {
            reading.Problem(fileAt, file.Why ?? "The file has more than 5 MB.", "Put a file of that name, no link and no larger than 5 MB, beside the project file.");
            return null;
        }

        try
        {
            if (!isSvg)
                return RingTurn.CounterClockwise(CsvOutline.Read(bytes));
            var (ring, inPixels) = SvgOutline.Read(bytes, pathId);
            if (inPixels)
                reading.Note(fileAt, "The drawing's size is given in pixels, taken as 96 to the inch.", "Check the sizes on the overview; better give width and height in mm, cm or in.");
            return RingTurn.CounterClockwise(ring);
        }
        catch (OutlineRefusal refusal)
        {
            reading.Problem(fileAt, $"{name}: {refusal.Message}", refusal.Do);
            return null;
        }
    }

    /// <summary>The corners where the line turns, told in a note; on a smooth ring two smooth ones.</summary>
    private (List<int> Starts, List<CornerEntry> Corners) Found(IReadOnlyList<EdgeCurve> ring, JsonPlace fileAt)
    {
        var starts = FoundCorners.ByTurn(ring);
        var isSmooth = starts.Count == 0;
        if (isSmooth && ring.Count > 1)
            starts = [0, ring.Count / 2];
        else if (starts.Count < 2)
            starts = [.. starts.Append(((starts is [var one] ? one : 0) + Math.Max(1, ring.Count / 2)) % ring.Count).Distinct().Order()];
        var sharp = FoundCorners.ByTurn(ring).ToHashSet();
        List<CornerEntry> corners = [.. starts.Select(s => new CornerEntry(Mm(ring[s].Start.X), Mm(ring[s].Start.Y), Smooth: !sharp.Contains(s)))];
        var listed = string.Join("; ", corners.Take(40).Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"corner {i + 1} [{Number(c.X)}, {Number(c.Y)}]{(c.Smooth ? " smooth" : "")}")));
        reading.Note(
            $"{path}.file",
            fileAt.Line,
            $"Corners were found where the line turns by {FoundCorners.LeastTurnDegrees:0} degrees or more{(isSmooth ? "; it turns nowhere so much" : "")}: {listed}{(corners.Count > 40 ? " ..." : "")}, in {LengthWords.UnitOf(reading.Unit)}.",
            "Name them with \"corners\": [{ \"at\": [x, y], \"name\": \"foot\" }, ...] to change them.");
        return (starts, corners);
    }

    private List<int>? Named(IReadOnlyList<EdgeCurve> ring, JsonPlace cornersAt, List<CornerEntry> corners)
    {
        List<int> starts = [];
        for (var i = 0; i < corners.Count; i++)
        {
            if (FoundCorners.Near(ring, new(corners[i].X.Millimetres, corners[i].Y.Millimetres)) is { } start)
                starts.Add(start);
            else
                reading.Problem(cornersAt.Items[i], "No joint of the drawn line lies within 5 mm of this corner.", "Take its place from the note that lists the corners found (leave \"corners\" out to see it), or add a node there in the drawing.");
        }

        if (starts.Count < corners.Count)
            return null;
        var falls = Enumerable.Range(0, starts.Count).Count(i => starts[(i + 1) % starts.Count] <= starts[i]);
        if (starts.Count >= 2 && falls == 1)
            return starts;
        reading.Problem(cornersAt, starts.Count < 2 ? "One corner makes no edges." : "The corners do not follow each other counter-clockwise along the drawn line.", "List two corners or more, counter-clockwise, each once.");
        return null;
    }

    private string Number(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.In(reading.Unit):0.##}");

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
