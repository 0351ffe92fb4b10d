using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>The finished or the unblocked piece for a screen, and where on it each measurement belongs.</summary>
/// <remarks>The outline is the piece's own where its measurements give one, else the kind's sketch.</remarks>
public sealed class MeasuringPicture
{
    private const double WidthMm = 120;
    private const double MostHeightMm = 130;
    private const double BesideMm = 9;
    private readonly PieceKind _kind;
    private readonly Measurements? _measured;
    private readonly string _path;
    private readonly TapePicture _picture;
    private readonly bool _isSketch;
    private readonly Box _across;

    private MeasuringPicture(PieceKind kind, Measurements? measured, string path, Outline? outline)
    {
        (_kind, _measured, _path, _isSketch) = (kind, measured, path, outline is null);
        var box = Box.Around((outline ?? kind.Sketch).Ring(0.5));
        var height = Math.Min(MostHeightMm, 22 + (box.Height * (WidthMm - 22) / box.Width));
        var page = new Box(0, 0, WidthMm, height);
        _picture = outline is null ? TapePicture.OfSketch(kind, page) : TapePicture.Of(kind, outline, page);
        _across = _picture.Placing.On(Box.Around(_picture.Outline.Ring(0.5)));
        Page = new(WidthMm, height, [.. _picture.Unnamed, .. path == "piece.finished" && !kind.GivenByCorners ? Dimensions() : []], "measure");
        Places = [.. path == "piece.finished" ? FinishedPlaces() : UnblockedPlaces()];
    }

    /// <summary>The picture.</summary>
    public Page Page { get; }

    /// <summary>The places of the measurements that are always asked for.</summary>
    public IReadOnlyList<MeasuredPlace> Places { get; }

    /// <summary>Whether it shows the kind's sketch, because the measurements do not give a shape yet.</summary>
    public bool IsSketch => _isSketch;

    /// <summary>The finished piece.</summary>
    public static MeasuringPicture Finished(PieceKind kind, Measurements measured)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(measured);
        return new(kind, measured, "piece.finished", Made(kind.Finished, measured));
    }

    /// <summary>The unblocked piece as measured, left and right as they are.</summary>
    public static MeasuringPicture Unblocked(PieceKind kind, Measurements? measured)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, measured, "piece.unblocked", measured is null ? null : Made(kind.Unblocked, measured));
    }

    private static Outline? Made(Func<Measurements, Findings, Outline?> make, Measurements measured)
    {
        var findings = new Findings();
        var outline = make(measured, findings);
        return findings.IsClean && measured.Unreadable.Count == 0 ? outline : null;
    }

    private IEnumerable<MeasuredPlace> FinishedPlaces()
    {
        if (_kind.GivenByCorners)
            return Corners();
        return _kind.FinishedSizes.Where(s => s.IsAsked).Select(s => Place($"{_path}.{s.Name}", s));
    }

    private IEnumerable<MeasuredPlace> UnblockedPlaces()
    {
        if (_kind.GivenByCorners)
            return Corners();
        return _kind.IsMeasuredBySides ? [.. Sides(), .. Diagonal()] : [.. Tapes(), .. Bows()];
    }

    /// <summary>Where a measurement of the finished size is taken: on its tape, at its edge, below or beside the piece.</summary>
    private MeasuredPlace Place(string path, SizeName size)
    {
        if (_picture.Tapes.FirstOrDefault(t => t.Name == size.Words) is { } tape)
            return OnTape(path, tape);
        if (EdgeOf(size) is { } edge)
        {
            var middle = edge.Curve.At(0.5);
            return new(path, _picture.Placing.On(middle), edge.Curve.Direction(0.5).TurnedRight);
        }

        return IsUp(size)
            ? new(path, new(_across.Left - BesideMm, _across.Centre.Y), new(-1, 0))
            : new(path, new(_across.Centre.X, _across.Lower - BesideMm), new(0, -1));
    }

    private bool IsUp(SizeName size) => size.Name == _kind.UpName && _kind.UpName != _kind.AcrossName;

    /// <summary>Lines beside and below the piece for the finished sizes that have no tape on it.</summary>
    private IEnumerable<Element> Dimensions()
    {
        foreach (var size in _kind.FinishedSizes.Where(s => s.IsAsked && _picture.Tapes.All(t => t.Name != s.Words) && EdgeOf(s) is null))
        {
            var (from, to) = IsUp(size)
                ? (new Point(_across.Left - BesideMm, _across.Lower), new Point(_across.Left - BesideMm, _across.Upper))
                : (new Point(_across.Left, _across.Lower - BesideMm), new Point(_across.Right, _across.Lower - BesideMm));
            var tick = 1.6 * (to - from).Unit.TurnedLeft;
            yield return new PathElement(PathSteps.Line(from, to), new(0.3, 0.2));
            foreach (var end in new[] { from, to })
                yield return new PathElement(PathSteps.Line(end - tick, end + tick), new(0.4));
        }
    }

    private Edge? EdgeOf(SizeName size) => _picture.Outline.Edges.FirstOrDefault(e => size.Words.Split(' ')[0] == e.Name);

    private MeasuredPlace OnTape(string path, TapeLine tape)
    {
        Point from = _picture.Placing.On(tape.From), to = _picture.Placing.On(tape.To);
        var isLevel = Math.Abs(to.X - from.X) > Math.Abs(to.Y - from.Y);
        return new(path, from.Toward(to, 0.3), isLevel ? new(0, 1) : new(1, 0));
    }

    private IEnumerable<MeasuredPlace> Tapes()
    {
        foreach (var size in _kind.UnblockedSizes.Where(s => s.IsAsked))
        {
            var path = $"{_path}.{size.Name}";
            var place = Place(path, size);
            if (!_isSketch && _picture.Tapes.FirstOrDefault(t => t.Name == size.Words) is { } tape && _measured!.Sizes.TryGetValue(size.Name, out var said) && said.Millimetres > 0)
            {
                Point from = _picture.Placing.On(tape.From), to = _picture.Placing.On(tape.To);
                if (from.DistanceTo(to) > 1)
                    place = place with { At = to, Handle = new(from, (to - from).Unit, said.Millimetres / from.DistanceTo(to), said.Millimetres, size.Reach == SizeReach.EitherWay) };
            }

            yield return place;
        }
    }

    private IEnumerable<MeasuredPlace> Sides()
    {
        foreach (var edge in _picture.Outline.Edges)
        {
            Point from = _picture.Placing.On(edge.Curve.Start), to = _picture.Placing.On(edge.Curve.End);
            yield return new($"{_path}.sides.{edge.Name}", from.Toward(to, 0.22), (to - from).Unit.TurnedRight);
            yield return Bow($"{_path}.bows.{edge.Name}", edge, _measured is null || !_measured.Along.ContainsKey(edge.Name));
        }
    }

    private IEnumerable<MeasuredPlace> Bows() => _kind.StraightEdges.Count == 0
        ? []
        : _picture.Outline.Edges.Where(e => _kind.StraightEdges.Contains(e.Name)).Select(e => Bow($"{_path}.bows.{e.Name}", e, true));

    private MeasuredPlace Bow(string path, Edge edge, bool drags)
    {
        Point from = _picture.Placing.On(edge.Curve.Start), to = _picture.Placing.On(edge.Curve.End);
        var (foot, middle, outward) = (from.Toward(to, 0.5), _picture.Placing.On(edge.Curve.At(0.5)), (to - from).Unit.TurnedRight);
        var value = (middle - foot).Dot(outward) / _picture.Placing.Scale;
        return new(path, middle, outward, drags && !_isSketch ? new(foot, outward, 1 / _picture.Placing.Scale, value, true) : null);
    }

    private IEnumerable<MeasuredPlace> Diagonal()
    {
        if (!_kind.TakesDiagonal)
            yield break;
        var ring = _picture.Outline;
        Point from = _picture.Placing.On(ring.CornerAt(0)), to = _picture.Placing.On(ring.CornerAt(2));
        yield return new($"{_path}.diagonal.length", from.Toward(to, 0.5), (to - from).Unit.TurnedLeft);
    }

    /// <summary>Corners and bows of a general outline.</summary>
    private IEnumerable<MeasuredPlace> Corners()
    {
        if (_isSketch || _measured?.Corners is null || _measured.Lines is not null)
            yield break;
        var centre = _picture.Placing.On(Box.Around(_picture.Outline.Ring(0.5)).Centre);
        for (var i = 0; i < _picture.Outline.Edges.Count; i++)
        {
            var at = _picture.Placing.On(_picture.Outline.CornerAt(i));
            yield return new($"{_path}.corners[{i}]", at, (at - centre).Unit);
            var entry = _measured.Edges?.ElementAtOrDefault(i);
            if (entry is null or { Bow: not null } or { Offsets: null, Points: null })
                yield return Bow($"{_path}.edges[{i}].bow", _picture.Outline.Edges[i], true);
        }
    }
}
