using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Pins;

/// <summary>Random pieces with the settings they are pinned by.</summary>
internal static class RandomPieces
{
    private static readonly Gen<EdgeTreatment> Treatment = Gen.Select(Gen.Int[0, 9], Gen.Int[1, 260], Gen.Bool, Gen.Int[0, 9], (counted, count, rows, hold) =>
        new EdgeTreatment(counted < 5 ? count : null, rows ? CountedIn.Rows : CountedIn.Stitches, hold == 0 ? Holding.None : Holding.Pins));

    /// <summary>How an edge runs between its corners: kind and size of its curve.</summary>
    private static readonly Gen<(int Kind, double Bow, double Skew)> Form = Gen.Select(Gen.Int[0, 3], Gen.Double[-0.12, 0.25], Gen.Double[-0.06, 0.06]);

    private static readonly Gen<PinSettings> Settings = Gen.Select(Gen.Int[0, 3], Gen.Double[12, 220], Gen.Double[8, 40], (said, spacing, least) =>
        PinSettings.Default with { Spacing = said == 0 ? null : Length.FromMillimetres(spacing), MinSpacing = Length.FromMillimetres(least) });

    private static readonly Gen<FabricSettings> Cloth = Gen.Select(Gen.Double[-0.03, 0.08], Gen.Double[-0.03, 0.08], Gen.Bool, (along, across, evenly) =>
        FabricSettings.Unsaid with { Kind = FabricKind.Lace, Stitch = (Length.FromMillimetres(7.1), Length.FromMillimetres(6)), SpringBack = new(along, evenly ? along : across) });

    /// <summary>Pieces without any symmetry but by chance.</summary>
    public static Gen<(Piece Piece, PinSettings Settings)> Any { get; } = Gen.Int[2, 7].SelectMany(n => Gen.Select(
        Gen.Double[220, 700].Array[n],
        Form.Array[n],
        Treatment.Array[n],
        Gen.Bool.Array[n],
        Gen.Select(Settings, Cloth, Gen.Double[0, 6], Gen.Int[0, 29], Gen.Double[0.75, 1.1].Array[n]),
        (radii, forms, edges, smooth, rest) =>
        {
            var (settings, cloth, turn, anchor, shrink) = rest;
            var finished = Ring(radii, forms, smooth, turn);
            var unblocked = Ring([.. radii.Select((r, i) => r * shrink[i])], forms, smooth, turn);
            return (new Piece(finished, unblocked, edges, WorkSide.RightSide, cloth), settings with { Anchor = AnchorName(anchor, n) });
        })).Where(x => IsSound(x.Item1));

    /// <summary>Pieces symmetric about an upright axis, in edges, corners, counts and everything said.</summary>
    public static Gen<(Piece Piece, PinSettings Settings)> Symmetric { get; } = Gen.Select(Gen.Int[1, 3], Gen.Bool, Gen.Bool).SelectMany(shape => Gen.Select(
        Gen.Double[220, 700].Array[shape.Item1 + 2],
        Form.Array[shape.Item1 + 2],
        Treatment.Array[shape.Item1 + 2],
        Gen.Bool.Array[shape.Item1 + 2],
        Gen.Select(Settings, Cloth, Gen.Double[0.75, 1.1], Gen.Int[0, 29], Gen.Double[-0.5, 0.5]),
        (radii, forms, edges, smooth, rest) =>
        {
            var (settings, cloth, shrink, anchor, turn) = rest;
            // A spring-back that differs along and across the rows keeps the symmetry only of a piece that lies straight.
            var move = cloth.SpringBack.Along == cloth.SpringBack.Across ? turn : 0;
            var half = new HalfRing(shape.Item1, shape.Item2, shape.Item3);
            var treatments = half.Edges(edges);
            var piece = new Piece(half.Ring(radii, forms, smooth, 1, move), half.Ring(radii, forms, smooth, shrink, -move), treatments, WorkSide.RightSide, cloth);
            return (piece, settings with { Anchor = AnchorName(anchor, treatments.Count) });
        })).Where(x => IsSound(x.Item1));

    public static PinPlan Plan((Piece Piece, PinSettings Settings) given)
    {
        var findings = new Findings(LengthUnit.Centimetres);
        var plan = PinPlanner.Plan(given.Piece, given.Settings, findings);
        Assert.True(findings.IsClean, string.Join("; ", findings.Problems));
        return Assert.IsType<PinPlan>(plan);
    }

    /// <summary>The line of an edge of a random form.</summary>
    public static EdgeCurve Line((int Kind, double Bow, double Skew) form, Point from, Point to)
    {
        var chord = from.DistanceTo(to);
        Point Off(double along, double away) => from.Toward(to, along) + (away * chord * (to - from).Unit.TurnedRight);
        return form.Kind switch
        {
            0 => new StraightEdge(from, to),
            1 => CircularArc.Between(from, to, form.Bow * chord),
            2 => new SplineEdge(from, to, [(0.3 * chord, (form.Bow + form.Skew) * chord), (0.7 * chord, (form.Bow - form.Skew) * chord)]),
            _ => new PolylineEdge([from, Off(0.3, form.Bow), Off(0.7, form.Bow - form.Skew), to]),
        };
    }

    private static bool IsSound(Piece piece) => IsSound(piece.Finished) && IsSound(piece.Unblocked!);

    private static bool IsSound(Outline outline) => OutlineCrossing.Find(outline) is null && outline.SignedArea() > 10_000;

    private static string? AnchorName(int pick, int edges) => pick switch
    {
        < 5 => null,
        < 10 => "none",
        < 16 => $"corner {pick % edges}",
        < 24 => $"middle of edge {pick % edges}",
        _ => $"edge {pick % edges}",
    };

    private static Outline Ring(double[] radii, (int Kind, double Bow, double Skew)[] forms, bool[] smooth, double turn)
    {
        var n = radii.Length;
        var centre = new Point(900, 400);
        var corners = radii.Select((r, i) => centre + (r * Vector.AtAngle(turn + (2 * Math.PI * i / n)))).ToList();
        return new(
            [.. corners.Select((c, i) => new Edge($"edge {i}", Line(n == 2 ? (1, Math.Max(0.1, forms[i].Bow), 0) : forms[i], c, corners[(i + 1) % n])))],
            [.. corners.Select((_, i) => new Corner($"corner {i}", smooth[i]))]);
    }
}
