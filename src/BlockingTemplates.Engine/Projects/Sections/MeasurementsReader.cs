using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads the finished or the unblocked size of a piece whose edges and corners have fixed names.</summary>
internal sealed class MeasurementsReader
{
    private readonly FileReading _reading;
    private readonly PieceKind _kind;
    private readonly string _path;
    private readonly HashSet<string> _unreadable = [];

    private MeasurementsReader(FileReading reading, PieceKind kind, string path)
    {
        _reading = reading;
        _kind = kind;
        _path = path;
    }

    /// <summary>Reads <c>piece.finished</c>, which may be missing (reported already).</summary>
    public static Measurements Finished(JsonPlace? place, PieceKind kind, FileReading reading)
    {
        var reader = new MeasurementsReader(reading, kind, "piece.finished");
        var sizes = kind.FinishedSizes.Select(s => s.Name).ToList();
        string[] names = [.. sizes, .. SectionNames.Of<FinishedSection>()];
        var section = Section.Open(place, names, $"the finished size of a {kind.Shape}", reading);
        if (!section.IsThere)
            reader.Unread(["", .. sizes.Select(s => "." + s)]);
        return new()
        {
            Path = reader._path,
            Sizes = reader.Lengths(kind.FinishedSizes.Select(s => (s.Name, section[s.Name], $"Fill it in: {s.HowToTake}.")), Limits.Size),
            Bows = reader.ByEdge(section, "bows", Limits.Signed, "Fill it in: the edge's greatest distance from its straight line; 0 where it is straight."),
            Unreadable = reader._unreadable,
        };
    }

    /// <summary>Reads <c>piece.unblocked</c>; null where it is left out or no object.</summary>
    public static Measurements? Unblocked(JsonPlace? place, PieceKind kind, FileReading reading)
    {
        var reader = new MeasurementsReader(reading, kind, "piece.unblocked");
        var section = Section.Open<UnblockedSection>(place, $"the unblocked size of a {kind.Shape}", reading);
        if (!section.IsThere)
            return null;
        return new()
        {
            Path = reader._path,
            Sides = reader.ByEdge(section, "sides", Limits.Size, "Fill it in: straight tape from corner to corner."),
            Bows = reader.ByEdge(section, "bows", Limits.Signed, "Fill it in: the edge's greatest distance from its straight line; 0 where it is straight."),
            Along = reader.ByEdge(section, "along", Limits.Size, "Fill it in: tape laid along the edge."),
            Diagonal = reader.Diagonal(section["diagonal"]),
            Unreadable = reader._unreadable,
        };
    }

    private Dictionary<string, Length> ByEdge(Section section, string name, LengthRange range, string fill)
    {
        var edges = Section.Open(section[name], _kind.EdgeNames, $"the edges of a {_kind.Shape}", _reading);
        if (!edges.IsThere && section[name] is { Kind: not JsonPlaceKind.Blank })
            Unread(["." + name, .. _kind.EdgeNames.Select(e => $".{name}.{e}")]);
        return Lengths(_kind.EdgeNames.Select(e => (e, edges[e], fill)), range);
    }

    private Dictionary<string, Length> Lengths(IEnumerable<(string Name, JsonPlace? Place, string Fill)> places, LengthRange range)
    {
        var lengths = new Dictionary<string, Length>();
        foreach (var (name, place, fill) in places)
        {
            if (place is not null && _reading.Measured(place, range, fill, _unreadable) is { } length)
                lengths.Add(name, length);
        }

        return lengths;
    }

    private DiagonalEntry? Diagonal(JsonPlace? place)
    {
        if (place is null or { Kind: JsonPlaceKind.Blank })
            return null;
        if (!_kind.TakesDiagonal)
        {
            _reading.Problem(place, $"A {_kind.Shape} is measured without a diagonal.", "Take it out, or write null.");
            return null;
        }

        var section = Section.Open<DiagonalSection>(place, "a diagonal", _reading);
        var from = Corner(section.Needed("from", "Fill in the corner it starts at.", _reading));
        var to = Corner(section.Needed("to", "Fill in the corner it ends at.", _reading));
        var length = section.Needed("length", "Fill it in: straight tape from the one corner to the other.", _reading) is { } at
            ? _reading.Measured(at, Limits.Size, "Fill it in: straight tape from the one corner to the other.", _unreadable)
            : null;
        if (from is not null && to is not null && length is { } read)
            return new(from, to, read);
        _unreadable.Add(_path + ".diagonal");
        return null;
    }

    private string? Corner(JsonPlace? place)
    {
        if (place is null || _reading.Text(place, Limits.LongestName) is not { } name)
            return null;
        if (_kind.CornerNames.Contains(name))
            return name;
        _reading.Problem(
            place,
            $"{place.Words} is no corner of a {_kind.Shape}.",
            NearestName.Of(name, _kind.CornerNames) is { } near ? $"Did you mean \"{near}\"?" : $"Write one of {Values.Listed(_kind.CornerNames)}.");
        return null;
    }

    private void Unread(IEnumerable<string> ends)
    {
        foreach (var end in ends)
            _unreadable.Add(_path + end);
    }
}
