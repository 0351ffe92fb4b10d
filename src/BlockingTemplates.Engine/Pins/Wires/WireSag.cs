using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>How far a wire on marks of an edge lies from the edge, under the cloth's pull.</summary>
/// <remarks>The wire is a continuous beam over the marks; on a curve its chords turn at each mark, and its free ends cut in.</remarks>
/// <param name="Curve">The pinned edge.</param>
/// <param name="Stiffness">Bending stiffness of the wire, in newtons times square millimetres.</param>
/// <param name="Load">The cloth's pull on the edge, in newtons a millimetre.</param>
public sealed record WireSag(EdgeCurve Curve, double Stiffness, double Load)
{
    private const int Samples = 16;

    /// <summary>Greatest distance of the wire from the edge in each gap between its marks, inside positive, in millimetres.</summary>
    /// <param name="marks">Arc lengths along the edge, increasing, in millimetres; two at least.</param>
    public IReadOnlyList<double> Worst(IReadOnlyList<double> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        Point[] at = [.. marks.Select(At)];
        double[] chords = [.. Enumerable.Range(1, at.Length - 1).Select(i => at[i - 1].DistanceTo(at[i]))];
        double[] turns = [.. Enumerable.Range(1, Math.Max(0, at.Length - 2)).Select(i => Turn(at[i] - at[i - 1], at[i + 1] - at[i]))];
        var beam = new ContinuousBeam(Stiffness, chords, Load, turns);
        return [.. chords.Select((_, gap) => Worst(beam, marks, at, chords, gap))];
    }

    private double Worst(ContinuousBeam beam, IReadOnlyList<double> marks, Point[] at, double[] chords, int gap)
    {
        var along = (at[gap + 1] - at[gap]).Unit;
        var worst = 0.0;
        for (var k = 1; k < Samples; k++)
        {
            // The line lies above its chord by so much, the wire below it.
            var past = At(marks[gap] + ((marks[gap + 1] - marks[gap]) * k / Samples)) - at[gap];
            var sag = beam.SagAt(gap, Math.Clamp(past.Dot(along), 0, chords[gap])) - along.Cross(past);
            worst = Math.Abs(sag) > Math.Abs(worst) ? sag : worst;
        }

        return worst;
    }

    private Point At(double mm) => Curve.At(Math.Clamp(mm / Curve.Length, 0, 1));

    private static double Turn(Vector before, Vector after) => Math.Atan2(before.Cross(after), before.Dot(after));
}
