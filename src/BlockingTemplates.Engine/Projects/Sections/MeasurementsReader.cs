using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads the finished or the unblocked size of a piece whose edges and corners have fixed names.</summary>
internal sealed class MeasurementsReader
{
    private const string BowFill = "Fill it in: the edge's greatest distance from its straight line; 0 where it is straight.";

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
        return reader.ByName(place, kind.FinishedSizes, out _);
    }

    /// <summary>Reads <c>piece.unblocked</c>; null where it is left out or no object.</summary>
    public static Measurements? Unblocked(JsonPlace? place, PieceKind kind, FileReading reading)
    {
        var reader = new MeasurementsReader(reading, kind, "piece.unblocked");
        if (!kind.IsMeasuredBySides)
        {
            var named = reader.ByName(place, kind.UnblockedSizes, out var isThere);
            return isThere ? named : null;
        }

        var section = Section.Open<UnblockedSection>(place, $"the unblocked size of {kind.WithArticle}", reading);
        if (!section.IsThere)
            return null;
        return new()
        {
            Path = reader._path,
            Sides = reader.ByEdge(section, "sides", kind.EdgeNames, Limits.Size, "Fill it in: straight tape from corner to corner."),
            Bows = reader.ByEdge(section, "bows", kind.EdgeNames, Limits.Signed, BowFill),
            Along = reader.ByEdge(section, "along", kind.EdgeNames, Limits.Size, "Fill it in: tape laid along the edge."),
            Diagonal = reader.Diagonal(section["diagonal"]),
            Unreadable = reader._unreadable,
        };
    }

    /// <summary>Measurements by name, and the bows of the edges that are straight unless said.</summary>
    private Measurements ByName(JsonPlace? place, IReadOnlyList<SizeName> sizes, out bool isThere)
    {
        var hasBows = _kind.StraightEdges.Count > 0;
        string[] names = [.. sizes.Select(s => s.Name), .. hasBows ? SectionNames.Of<FinishedSection>() : []];
        var section = Section.Open(place, names, $"the {_path[(_path.LastIndexOf('.') + 1)..]} size of {_kind.WithArticle}", _reading);
        isThere = section.IsThere;
        if (!isThere)
            Unread(["", .. sizes.Select(s => "." + s.Name)]);
        return new()
        {
            Path = _path,
            Sizes = Lengths(sizes.Select(s => (s.Name, section[s.Name], $"Fill it in: {s.HowToTake}.", Range(s.Reach)))),
            Bows = hasBows ? ByEdge(section, "bows", _kind.StraightEdges, Limits.Signed, BowFill) : [],
            Unreadable = _unreadable,
        };
    }

    private static LengthRange Range(SizeReach reach) => reach switch
    {
        SizeReach.AboveZero => Limits.Size,
        SizeReach.FromZero => Limits.Station,
        SizeReach.EitherWay => Limits.Signed,
        _ => throw new ArgumentOutOfRangeException(nameof(reach)),
    };

    private Dictionary<string, Length> ByEdge(Section section, string name, IReadOnlyList<string> edgeNames, LengthRange range, string fill)
    {
        var edges = Section.Open(section[name], edgeNames, $"the edges of {_kind.WithArticle}", _reading);
        if (!edges.IsThere && section[name] is { Kind: not JsonPlaceKind.Blank })
            Unread(["." + name, .. edgeNames.Select(e => $".{name}.{e}")]);
        return Lengths(edgeNames.Select(e => (e, edges[e], fill, range)));
    }

    private Dictionary<string, Length> Lengths(IEnumerable<(string Name, JsonPlace? Place, string Fill, LengthRange Range)> places)
    {
        var lengths = new Dictionary<string, Length>();
        foreach (var (name, place, fill, range) in places)
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
            _reading.Problem(place, $"{char.ToUpperInvariant(_kind.WithArticle[0])}{_kind.WithArticle[1..]} is measured without a diagonal.", "Take it out, or write null.");
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
            $"{place.Words} is no corner of {_kind.WithArticle}.",
            NearestName.Of(name, _kind.CornerNames) is { } near ? $"Did you mean \"{near}\"?" : $"Write one of {Values.Listed(_kind.CornerNames)}.");
        return null;
    }

    private void Unread(IEnumerable<string> ends)
    {
        foreach (var end in ends)
            _unreadable.Add(_path + end);
    }
}
