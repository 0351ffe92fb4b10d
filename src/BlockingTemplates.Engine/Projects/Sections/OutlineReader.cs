using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads the finished or the unblocked size of a piece given by corners and edges.</summary>
internal sealed class OutlineReader
{
    private const string CornerFill = "Fill it in: x to the right and y up, from one and the same point.";

    private readonly FileReading _reading;
    private readonly string _path;
    private readonly HashSet<string> _unreadable = [];

    private OutlineReader(FileReading reading, string path)
    {
        _reading = reading;
        _path = path;
    }

    /// <summary>Reads it; a place that is missing or no object gives measurements that are unreadable as a whole.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="path">Its path.</param>
    /// <param name="reading">Takes problems.</param>
    /// <param name="cornerNames">The corners' names, or null where it is not known how many there are.</param>
    /// <param name="edgeNames">The edges' names, likewise.</param>
    public static Measurements Read(
        JsonPlace? place, string path, FileReading reading, out IReadOnlyList<string>? cornerNames, out IReadOnlyList<string>? edgeNames)
    {
        var reader = new OutlineReader(reading, path);
        var section = Section.Open<OutlineSection>(place, "an outline", reading);
        if (!section.IsThere)
            reader._unreadable.UnionWith([path, path + ".corners"]);
        var fileAt = section["file"] is { Kind: not JsonPlaceKind.Blank } at ? at : null;
        var cornersAt = fileAt is null
            ? section.Needed("corners", "Give the corners counter-clockwise, such as [[0, 0], [80, 0], [80, 40], [0, 40]], or the name of a drawing: \"file\": \"shawl.svg\".", reading)
            : section["corners"] is { Kind: not JsonPlaceKind.Blank } named ? named : null;
        if (section.IsThere && cornersAt is null && fileAt is null)
            reader._unreadable.Add(path + ".corners");
        var corners = cornersAt is null ? null : reader.Corners(cornersAt);
        var edges = section["edges"] is { } edgesAt ? reader.Edges(edgesAt) : null;
        IReadOnlyList<EdgeCurve>? lines = null;
        var pathId = reading.Text(section["pathId"], Limits.LongestFileName);
        if (fileAt is null && pathId is not null)
            reading.Problem(section["pathId"]!, "A path's id stands without a file.", "Name the SVG file too: \"file\": \"shawl.svg\"; or take it out.");
        if (fileAt is not null)
        {
            var drawn = reader._unreadable.Count > 0 ? null : new DrawnOutlineReader(reading, path).Read(fileAt, pathId, cornersAt, corners, section["edges"], edges);
            if (drawn is null)
                reader._unreadable.UnionWith([path, path + ".corners"]);
            (lines, corners, edges) = (drawn?.Lines, drawn?.Corners ?? corners, drawn?.Edges ?? edges);
        }

        cornerNames = corners?.Select((c, i) => c.Name ?? Numbered("corner", i)).ToList();
        var count = Math.Max(corners?.Count ?? 0, edges?.Count ?? 0);
        edgeNames = corners is null && edges is null
            ? null
            : [.. Enumerable.Range(0, count).Select(i => i < edges?.Count && edges[i].Name is { } name ? name : Numbered("edge", i))];
        reader.CheckNames(cornersAt ?? fileAt, cornerNames, section["edges"], edgeNames);
        var isWhole = !reader._unreadable.Any(u => u.StartsWith(path + ".corners", StringComparison.Ordinal));
        if (!isWhole)
            reader._unreadable.Add(path + ".corners");
        return new() { Path = path, Corners = isWhole ? corners : null, Edges = edges, Lines = isWhole ? lines : null, Unreadable = reader._unreadable };
    }

    private static string Numbered(string what, int index) => string.Create(CultureInfo.InvariantCulture, $"{what} {index + 1}");

    private List<CornerEntry>? Corners(JsonPlace place)
    {
        if (!_reading.IsList(place, Limits.MostEdges, "a list of corners", "Write them such as [[0, 0], [80, 0], [80, 40], [0, 40]]."))
        {
            _unreadable.Add(place.Path);
            return null;
        }

        return [.. place.Items.Select(Corner)];
    }

    private CornerEntry Corner(JsonPlace place)
    {
        if (place.Kind != JsonPlaceKind.Object)
        {
            var at = _reading.MeasuredPair(place, Limits.Signed, Limits.Signed, "[x, y]", CornerFill, _unreadable) ?? default;
            return new(at.First, at.Second);
        }

        var section = Section.Open<CornerSection>(place, "a corner", _reading);
        (Length First, Length Second)? spot = null;
        if (section.Needed("at", "Write where it stands, such as \"at\": [80, 40].", _reading) is { } atPlace)
            spot = _reading.MeasuredPair(atPlace, Limits.Signed, Limits.Signed, "[x, y]", CornerFill, _unreadable);
        else
            _unreadable.Add(place.Path + ".at");
        var name = Name(section["name"]);
        var smooth = _reading.YesNo(section["smooth"]) ?? false;
        return new(spot?.First ?? Length.Zero, spot?.Second ?? Length.Zero, name, smooth);
    }

    private List<EdgeEntry>? Edges(JsonPlace place)
    {
        if (!_reading.IsList(place, Limits.MostEdges, "a list of edges", "Write them such as [{ \"name\": \"lower\", \"bow\": 4 }]."))
        {
            if (place.Kind != JsonPlaceKind.Blank)
                _unreadable.Add(place.Path);
            return null;
        }

        return [.. place.Items.Select(Edge)];
    }

    private EdgeEntry Edge(JsonPlace place)
    {
        if (place.Kind is not (JsonPlaceKind.Object or JsonPlaceKind.Blank))
            _unreadable.Add(place.Path);
        var section = Section.Open<OutlineEdgeSection>(place, "an edge", _reading);
        var name = Name(section["name"]);
        var bow = section["bow"] is { } at
            ? _reading.Measured(at, Limits.Signed, "Fill it in: the edge's greatest distance from its straight line; 0 where it is straight.", _unreadable)
            : null;
        return new(
            name,
            bow,
            Pairs(section["offsets"], Limits.Station, "[along, out]", "Fill it in: how far along the straight line from the first corner, and how far out."),
            Pairs(section["points"], Limits.Signed, "[x, y]", CornerFill));
    }

    private List<(Length, Length)>? Pairs(JsonPlace? place, LengthRange first, string names, string fill)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (!_reading.IsList(place, Limits.MostPoints, $"a list of {names}", "Write them such as [[12, 3], [24, 4.5]]."))
        {
            _unreadable.Add(place.Path);
            return null;
        }

        var pairs = new List<(Length, Length)>();
        foreach (var item in place.Items)
        {
            if (_reading.MeasuredPair(item, first, Limits.Signed, names, fill, _unreadable) is { } pair)
                pairs.Add(pair);
        }

        return pairs;
    }

    private string? Name(JsonPlace? place)
    {
        if (place is null || _reading.Text(place, Limits.LongestName) is not { } name)
            return null;
        if (name.Length > 0 && name != PinSettings.NoAnchor && !name.StartsWith(PinSettings.MiddleOf, StringComparison.Ordinal))
            return name;
        _reading.Problem(place, $"{place.Words} cannot be a name.", "Choose another; empty names, \"none\" and \"middle of ...\" have a meaning of their own.");
        return null;
    }

    private void CheckNames(JsonPlace? cornersAt, IReadOnlyList<string>? corners, JsonPlace? edgesAt, IReadOnlyList<string>? edges)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < corners?.Count; i++)
            Check(corners[i], i < cornersAt!.Items.Count ? cornersAt.Items[i] : cornersAt);
        for (var i = 0; i < edges?.Count; i++)
            Check(edges[i], i < edgesAt?.Items.Count ? edgesAt.Items[i] : cornersAt!);

        void Check(string name, JsonPlace place)
        {
            if (!taken.Add(name))
            {
                _reading.Problem(
                    place.Member("name") ?? place,
                    $"The name \"{JsonPlace.Shown(name)}\" is given a second time.",
                    "Give every corner and every edge a name of its own.");
            }
        }
    }
}
