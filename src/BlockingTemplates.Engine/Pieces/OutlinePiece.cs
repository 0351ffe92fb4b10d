using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The general form: corners in the plane and the lines between them.</summary>
public sealed class OutlinePiece : PieceKind
{
    /// <summary>Corners nearer than this stand on the same place.</summary>
    private const double SamePlaceMm = 1;

    /// <inheritdoc/>
    public override string Shape => "outline";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeName> FinishedSizes { get; } = [];

    /// <inheritdoc/>
    public override IReadOnlyList<string> EdgeNames { get; } = [];

    /// <inheritdoc/>
    public override IReadOnlyList<string> CornerNames { get; } = [];

    /// <inheritdoc/>
    public override bool GivenByCorners => true;

    /// <inheritdoc/>
    public override Outline Sketch { get; } = SketchOf([new(0, 0), new(900, 40), new(800, 520), new(60, 480)], [60, 40, -50, 30]);

    /// <inheritdoc/>
    public override Outline? Finished(Measurements measured, Findings findings) => Ring(measured, findings);

    /// <inheritdoc/>
    public override Outline? Unblocked(Measurements measured, Findings findings) => Ring(measured, findings);

    private static Outline? Ring(Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        var path = measured.Path;
        if (measured is { Lines: { } lines, Corners: { } ends, Edges: { } parts })
        {
            var (lineNames, endNames) = (EntryNames.Edges(parts), EntryNames.Corners(ends));
            return new([.. lines.Select((l, i) => new Edge(lineNames[i], l))], [.. ends.Select((c, i) => new Corner(endNames[i], c.Smooth))]);
        }

        if (measured.Corners is not { } corners)
        {
            if (!measured.Unreadable.Contains($"{path}.corners") && !measured.Unreadable.Contains(path))
                findings.Problem($"{path}.corners", "The corners are missing.", "List them counter-clockwise as [x, y].");
            return null;
        }

        var n = corners.Count;
        if (n < 2)
        {
            findings.Problem($"{path}.corners", "An outline needs two corners at least.", "List the corners counter-clockwise as [x, y].");
            return null;
        }

        var edges = measured.Edges ?? [.. Enumerable.Repeat(new EdgeEntry(), n)];
        if (edges.Count != n)
        {
            findings.Problem($"{path}.edges", $"There are {n} corners but {edges.Count} edges.", "List one edge for each corner: edge i runs from corner i to the next one, the last one back to the first. A plain line is {}.");
            return null;
        }

        if (measured.Unreadable.Any(u => u.StartsWith(path, StringComparison.Ordinal)))
            return null;
        var names = EntryNames.Edges(edges);
        List<Edge> built = [];
        for (var i = 0; i < n; i++)
        {
            Point from = At(corners[i]), to = At(corners[(i + 1) % n]);
            if (from.DistanceTo(to) < SamePlaceMm)
                findings.Problem($"{path}.corners[{i}]", "This corner and the next one stand on the same place.", "Take one of them out.");
            else if (Line($"{path}.edges[{i}]", names[i], edges[i], from, to, findings) is { } line)
                built.Add(new(names[i], line));
        }

        if (built.Count < n)
            return null;
        var cornerNames = EntryNames.Corners(corners);
        return new(built, [.. corners.Select((c, i) => new Corner(cornerNames[i], c.Smooth))]);
    }

    private static EdgeCurve? Line(string path, string name, EdgeEntry entry, Point from, Point to, Findings findings)
    {
        var said = (entry.Bow is null ? 0 : 1) + (entry.Offsets is null ? 0 : 1) + (entry.Points is null ? 0 : 1);
        if (said > 1)
        {
            findings.Problem(path, $"Edge \"{name}\" is given more than once: by bow, offsets or points.", "Keep one of them.");
            return null;
        }

        var chord = from.DistanceTo(to);
        if (entry.Bow is { } bow)
        {
            if (Math.Abs(bow.Millimetres) <= chord / 2)
                return CircularArc.Between(from, to, bow.Millimetres);
            findings.Problem($"{path}.bow", $"Edge \"{name}\" bows by more than half the distance between its corners: an arc past the half circle.", "Add a corner on the arc (\"smooth\": true if no pin is forced there).");
            return null;
        }

        if (entry.Offsets is { Count: > 0 } offsets)
        {
            for (var i = 0; i < offsets.Count; i++)
            {
                var before = i == 0 ? 0 : offsets[i - 1].Along.Millimetres;
                if (offsets[i].Along.Millimetres <= before || offsets[i].Along.Millimetres >= chord)
                {
                    findings.Problem($"{path}.offsets[{i}]", $"Stations of edge \"{name}\" must come one after the other between its corners, {findings.Say(chord)} apart; this one stands at {findings.Say(offsets[i].Along.Millimetres)}.", "Measure along the straight line from the edge's first corner, in order.");
                    return null;
                }
            }

            return new SplineEdge(from, to, [.. offsets.Select(o => (o.Along.Millimetres, o.Out.Millimetres))]);
        }

        if (entry.Points is not { Count: > 0 } points)
            return new StraightEdge(from, to);
        List<Point> line = [from, .. points.Select(p => new Point(p.X.Millimetres, p.Y.Millimetres)), to];
        var twice = Enumerable.Range(1, line.Count - 1).Where(i => line[i] == line[i - 1]).ToList();
        foreach (var i in twice)
            findings.Problem($"{path}.points[{Math.Min(i - 1, points.Count - 1)}]", $"A point of edge \"{name}\" stands twice in a row.", "Take one of them out.");
        return twice.Count == 0 ? new PolylineEdge(line) : null;
    }

    private static Point At(CornerEntry corner) => new(corner.X.Millimetres, corner.Y.Millimetres);

    private static Outline SketchOf(IReadOnlyList<Point> corners, IReadOnlyList<double> bows) => new(
        [.. corners.Select((c, i) => new Edge($"edge {i + 1}", CircularArc.Between(c, corners[(i + 1) % corners.Count], bows[i])))],
        [.. corners.Select((_, i) => new Corner($"corner {i + 1}"))]);
}
