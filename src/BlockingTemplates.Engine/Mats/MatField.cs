using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Lays the fewest mats under a pinned piece.</summary>
/// <remarks>
/// A mat is laid where its open square comes nearer than the border (round corners) to the region inside the pinned
/// outline; 0.01 mm is contact only. Least over all shifts on a 1 mm grid and the allowed turns; ties: fewest marks
/// within the seam clearance, then fewest columns times rows, then least turn, then least shift in x, then y. With
/// no shift a corner of the lattice stands at the lower left of the box of outline and border, so that an exact fit of the
/// mats is always among those tried. The frame lies along the mats: where they turn freely, the piece is turned in it
/// instead (by 45 degrees at most), so that distances on a mat, seams and sheets stay upright. Where a floor is given, only
/// fields that fit on it count; where none does, the floor is left out and a note says by how much.
/// </remarks>
public static class MatField
{
    /// <summary>How far from its mark a pull is followed to find the seams it crosses, in millimetres.</summary>
    public const double PullReachMm = 100;

    /// <summary>The layout, and the pin plan moved into its frame.</summary>
    /// <param name="plan">Where the pins go, in any frame.</param>
    /// <param name="settings">The mats; turns below 0 or above 179 degrees throw.</param>
    /// <param name="move">
    /// Moves a mark by whole stitches along its edge, or tells by null that it may not:
    /// <see cref="MarkShift.Moved"/> if left out.
    /// </param>
    /// <param name="units">The units in which notes tell lengths.</param>
    public static MatPlan Plan(
        PinPlan plan, MatSettings settings, Func<PinPlan, int, int, PinPlan?>? move = null, LengthUnit units = LengthUnit.Millimetres)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var (mats, turn) = Fewest(plan.Pinned.Ring(), [.. plan.Marks.Select(m => m.At)], settings);
        var clearance = settings.SeamClearance.Millimetres;
        var corner = mats.Corner(new(0, 0));
        if (turn.PieceDegrees != 0)
            plan = plan.Turned(turn.PieceDegrees * Math.PI / 180);
        var pins = MarksOffSeams.Moved(plan, mats, clearance, move ?? MarkShift.Moved).Shifted(Point.Origin - corner);
        var layout = Layout(pins, new(mats.Cells, Point.Origin, mats.PitchX, mats.PitchY), turn, clearance);
        return new(pins, layout, MatNotes.Of(layout, settings, units));
    }

    private static (LaidMats Mats, MatTurn Turn) Fewest(IReadOnlyList<Point> ring, IReadOnlyList<Point> marks, MatSettings settings) =>
        MatSearch.Fewest(ring, marks, settings, settings.Floor)
        ?? MatSearch.Fewest(ring, marks, settings, null)
        ?? throw new InvalidOperationException("A piece always lies on some mats.");

    private static MatLayout Layout(PinPlan pins, LaidMats mats, MatTurn turn, double clearance) => new()
    {
        PitchX = mats.PitchX,
        PitchY = mats.PitchY,
        TurnDegrees = turn.Degrees,
        PieceTurnDegrees = turn.PieceDegrees,
        Columns = mats.Columns,
        Rows = mats.Rows,
        Mats = [.. mats.Cells.Select(c => new Mat(LaidMats.Name(c), c.Column, c.Row, mats.Corner(c)))],
        Seats = [.. pins.Marks.Select(m => SeatOf(m, mats, clearance))],
        CrossedSeams = [.. mats.Seams.Select(s => Crossed(s, pins.Marks)).Where(s => s.Marks.Count > 0)],
    };

    private static Seat SeatOf(Mark mark, LaidMats mats, double clearance)
    {
        var cell = mats.Under(mark.At);
        // A comb is as near a seam as its nearest prong.
        var distance = mark.Bar is { } bar ? bar.ProngsAt.Min(mats.SeamDistance) : mats.SeamDistance(mark.At);
        return new(mark.Number, LaidMats.Name(cell), mark.At - mats.Corner(cell), distance, LaidMats.IsNear(distance, clearance));
    }

    private static CrossedSeam Crossed(Seam seam, IReadOnlyList<Mark> marks) => new(
        LaidMats.Name(seam.First),
        LaidMats.Name(seam.Second),
        seam.From,
        seam.To,
        [.. marks.Where(m => m.Pull is { } pull && seam.IsCrossedBy(m.At, Reached(m.At, pull))).Select(m => m.Number)]);

    /// <summary>How far back along its pull a mark is followed.</summary>
    private static Point Reached(Point at, Vector pull) => at - (Math.Min(1, PullReachMm / pull.Length) * pull);
}
