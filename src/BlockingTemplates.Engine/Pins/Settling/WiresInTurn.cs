namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Which wires are taken while pin after pin is set.</summary>
/// <remarks>
/// The maker threads the wires before the first pin. Their bending is taken across the pinned line (<see cref="Fabrics.EdgeWire"/>):
/// on a straight edge that is right as long as the edge lies roughly as its line does, on a curved one only once its parts do. Wires
/// on curves are therefore taken once both their corners are pinned and none of their gaps turns by more than 60 degrees: on the
/// shipped half circle nine tenths of the wire then lie within 22 degrees of their line's direction, so that its bending is
/// taken some 5 % too low. Leaving that wire out altogether would move the pulls by 2 to 27 mm.
/// </remarks>
internal sealed class WiresInTurn
{
    private const double MostTurn = Math.PI / 3;
    private const double Straight = 1e-6;
    private const int StepsOfAnEdge = 720;

    private readonly PinPlan _plan;
    private readonly Dictionary<int, double[]> _turns;

    /// <summary>The wires of a plan.</summary>
    internal WiresInTurn(PinPlan plan)
    {
        _plan = plan;
        _turns = plan.Wired.ToDictionary(w => w.Edge, w => Turns(plan, w.Edge));
    }

    /// <summary>Whether the wires of an edge are taken once some marks are pinned.</summary>
    internal bool AreTaken(int edge, IReadOnlyList<Mark> pinned)
    {
        if (!_turns.TryGetValue(edge, out var turns))
            return false;
        if (turns[^1] <= Straight)
            return true;
        var end = (edge + 1) % _plan.Edges.Count;
        if (!pinned.Any(m => m.Edge == edge && m.IsCorner) || !pinned.Any(m => m.Edge == end && m.IsCorner))
            return false;
        double[] at = [.. pinned.Where(m => m.Edge == edge).Select(m => m.Fraction).Append(1).Order()];
        return at.Zip(at.Skip(1)).All(gap => TurnUpTo(turns, gap.Second) - TurnUpTo(turns, gap.First) <= MostTurn);
    }

    /// <summary>Whether the wires of every edge are taken.</summary>
    internal bool AreAllTaken(IReadOnlyList<Mark> pinned) => _turns.Keys.All(e => AreTaken(e, pinned));

    private static double TurnUpTo(double[] turns, double fraction) => turns[(int)Math.Round(fraction * StepsOfAnEdge)];

    /// <summary>How far the pinned edge turns up to each of many places, either way, in radians.</summary>
    private static double[] Turns(PinPlan plan, int edge)
    {
        var curve = plan.Pinned.Edges[edge].Curve;
        var turns = new double[StepsOfAnEdge + 1];
        for (var i = 1; i <= StepsOfAnEdge; i++)
        {
            var (a, b) = (curve.Direction((i - 1.0) / StepsOfAnEdge), curve.Direction((double)i / StepsOfAnEdge));
            turns[i] = turns[i - 1] + Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
        }

        return turns;
    }
}
