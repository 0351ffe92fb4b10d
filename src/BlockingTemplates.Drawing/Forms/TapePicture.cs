using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Drawing.Writing;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>A piece with the tape on it: its shape with the names of edges and corners, straight tapes dashed, bows as short lines.</summary>
internal sealed class TapePicture
{
    /// <summary>A kind with more tapes than this by name has no room for the names of its corners.</summary>
    public const int FewTapes = 4;

    /// <summary>Where along a line its name stands, clear of what crosses the middle.</summary>
    private const double NameAt = 0.3;

    private const double BorderMm = 11;
    private readonly PieceKind _kind;

    private TapePicture(PieceKind kind, Outline outline, IReadOnlyList<TapeLine> tapes, Box box)
    {
        (_kind, Outline, Tapes) = (kind, outline, tapes);
        Placing = FramePlacing.Fit(Box.Around([.. outline.Ring(0.5), .. tapes.SelectMany(l => new[] { l.From, l.To })]), box.Grown(-BorderMm));
    }

    /// <summary>The outline shown, in its own frame.</summary>
    public Outline Outline { get; }

    /// <summary>The tapes by name, in the same frame.</summary>
    public IReadOnlyList<TapeLine> Tapes { get; }

    /// <summary>Where that frame stands on the page.</summary>
    public FramePlacing Placing { get; }

    /// <summary>What is drawn.</summary>
    public IEnumerable<Element> Content => [.. Shape(), .. Edges(true), .. TapeLines(true)];

    /// <summary>The same without the names, for where fields stand beside the places.</summary>
    public IEnumerable<Element> Unnamed => [.. Shape(), .. Edges(false), .. TapeLines(false)];

    /// <summary>The picture of a kind's sketch.</summary>
    public static TapePicture OfSketch(PieceKind kind, Box box) => new(kind, kind.Sketch, kind.TapeLines, box);

    /// <summary>The picture of a piece of the kind; its tapes lie as on the sketch, stretched to the piece's width and height.</summary>
    public static TapePicture Of(PieceKind kind, Outline outline, Box box)
    {
        if (kind.TapeLines.Count == 0)
            return new(kind, outline, [], box);
        Box from = Box.Around(kind.Sketch.Ring()), to = Box.Around(outline.Ring());
        Point Moved(Point p) => new(
            to.Left + ((p.X - from.Left) * to.Width / from.Width),
            to.Lower + ((p.Y - from.Lower) * to.Height / from.Height));
        return new(kind, outline, [.. kind.TapeLines.Select(l => l with { From = Moved(l.From), To = Moved(l.To) })], box);
    }

    /// <summary>Whether a bow is measured on an edge.</summary>
    public bool TakesBow(string edge) => _kind.GivenByCorners || _kind.StraightEdges.Contains(edge);

    private IEnumerable<Element> Shape()
    {
        yield return new PathElement(PathSteps.Polyline(Outline.Ring(0.5).Select(Placing.On), true), new(0.6), new Fill(0.95));
    }

    private IEnumerable<Element> Edges(bool named)
    {
        var middleOfAll = Placing.On(Box.Around(Outline.Ring(0.5)).Centre);
        for (var i = 0; i < Outline.Edges.Count; i++)
        {
            var curve = Outline.Edges[i].Curve;
            Point from = Placing.On(curve.Start), to = Placing.On(curve.End), middle = Placing.On(curve.At(0.5));
            var outward = (to - from).Unit.TurnedRight;
            var foot = from.Toward(to, 0.5);
            var takesBow = TakesBow(Outline.Edges[i].Name);
            if (takesBow)
                yield return new PathElement(PathSteps.Line(from, to), new(0.3, 0.2, [2, 1.2]));
            if (takesBow && foot.DistanceTo(middle) > 0.5)
                yield return new PathElement(PathSteps.Line(foot, middle), new(0.5));
            yield return new PathElement(PathSteps.Circle(from, 1), null, new Fill());
            if (!named)
                continue;
            var outer = (middle - foot).Dot(outward) > 0 ? middle : foot;
            if (!takesBow)
                (outer, outward) = (Placing.On(curve.At(NameAt)), curve.Direction(NameAt).TurnedRight);
            yield return Label(Outline.Edges[i].Name, outer, outward, TextStyle.Strong.SizeMm, FontWeight.Bold);
            var inner = outer == middle ? foot : middle;
            if (takesBow && (_kind.GivenByCorners || _kind.IsMeasuredBySides))
                yield return Label("bow", inner, -outward, TextStyle.Small.SizeMm, FontWeight.Regular);
            if (_kind.TapeLines.Count <= FewTapes)
                yield return Label(Outline.Corners[i].Name, from, (from - middleOfAll).Unit, TextStyle.Small.SizeMm, FontWeight.Regular);
        }
    }

    private IEnumerable<Element> TapeLines(bool named)
    {
        foreach (var line in Tapes)
        {
            Point from = Placing.On(line.From), to = Placing.On(line.To);
            yield return new PathElement(PathSteps.Line(from, to), new(0.3, 0.2, [2, 1.2]));
            if (named)
                yield return Label(line.Name, from.Toward(to, NameAt), Math.Abs(to.X - from.X) > Math.Abs(to.Y - from.Y) ? new(0, 1) : new(1, 0), TextStyle.Small.SizeMm, FontWeight.Regular);
        }
    }

    private static TextElement Label(string text, Point at, Vector away, double size, FontWeight weight)
    {
        var half = TextMeasure.AdvanceMm(text, size, weight) / 2;
        var off = away.Length > 0 ? 1.8 + (Math.Abs(away.X) * half) + (Math.Abs(away.Y) * size / 2) : 0;
        var centre = at + (off * away);
        return new(text, new(centre.X, centre.Y - (0.35 * size)), size, weight, TextAlign.Centre);
    }
}
