using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>Follows the cloth while pin after pin is set in the order of the marks' numbers.</summary>
/// <remarks>
/// The first pin finds the cloth on its lay line, the second on the lay line moved by the first pull; after that the cloth
/// is at rest under the pins so far. Each rest starts from the one before it. While few pins hold, most of the cloth is
/// slack and lies where friction leaves it: there it is kept near an even shape by more than the little stiffness that a
/// fully pinned piece takes (on the shipped examples that moves no pull by more than 1 mm once ten pins hold). Wires are in
/// from the first pin on, since they are threaded before it, free to turn about the pins; those on curves later, as
/// <see cref="WiresInTurn"/> says, and pulls until then are told as approximate.
/// </remarks>
internal static class PinningInTurn
{
    /// <summary>Rim nodes of the coarser mesh that is enough to follow the pulls.</summary>
    internal const int RimNodes = 400;

    private const double Tolerance = 1e-5;
    private const int Few = 10;
    private const double StayWhileTurning = 1e-2;
    private const double StayOfFew = 1e-3;
    private const double StayOfMany = 1e-4;
    private const double OneLine = 0.02;

    /// <summary>The pulls of some marks in turn.</summary>
    /// <param name="plan">The pins, with a lay line.</param>
    /// <param name="cloth">The cloth, for this thread alone.</param>
    /// <param name="from">Number of the first mark.</param>
    /// <param name="to">Number of the last mark.</param>
    /// <param name="computation">Ends it; once the time is up the rest is left out.</param>
    /// <param name="withForces">Whether to find the force on the last mark too.</param>
    internal static List<PullInTurn> Of(PinPlan plan, PinnedCloth cloth, int from, int to, Computation computation, bool withForces = false)
    {
        List<PullInTurn> pulls = [];
        var wires = new WiresInTurn(plan);
        IReadOnlyList<Point>? places = null;
        double? force = null;
        for (var number = from; number <= to && !computation.IsTimeUp; number++)
        {
            var mark = plan.Marks[number - 1];
            var before = plan.Marks.Take(number - 1).ToList();
            var canTurn = CanTurn(before);
            if (before.Count >= 2)
            {
                var rest = Rest(before, canTurn);
                if (!rest.Converged)
                    break;
                places = rest.Places;
                force = Force(before, rest);
            }

            if (number > from)
                pulls[^1] = pulls[^1] with { Force = force };
            pulls.Add(new(before.Count < 2 ? OnLayLine(mark, before) : cloth.StitchAt(mark, places!), canTurn || !wires.AreAllTaken(before), null));
        }

        if (withForces && pulls.Count == to - from + 1 && to >= 2)
        {
            var rest = Rest([.. plan.Marks.Take(to)], false);
            if (rest.Converged)
                pulls[^1] = pulls[^1] with { Force = Force([.. plan.Marks.Take(to)], rest) };
        }

        return pulls;

        // On the last of the marks.
        double Force(List<Mark> under, Equilibrium rest) => Held(under).Loads(rest, under.Count)[^1].Length;
        HeldMarks Held(List<Mark> under) => cloth.Threaded(plan, under, e => wires.AreTaken(e, under));
        Equilibrium Rest(List<Mark> under, bool canTurn) => cloth.Hold(
            Held(under).Support, places, computation, tolerance: Tolerance, slackShare: canTurn ? StayWhileTurning : under.Count <= Few ? StayOfFew : StayOfMany);
    }

    private static Point OnLayLine(Mark mark, List<Mark> before) => mark.Rest!.Value + (before.Count == 0 ? default : before[0].Pull!.Value);

    /// <summary>Whether fewer than three pins hold, or all on one line: none farther off it than a share of its length.</summary>
    private static bool CanTurn(List<Mark> before)
    {
        if (before.Count < 3)
            return true;
        var first = before[0].At;
        var far = before.MaxBy(m => m.At.DistanceTo(first))!.At;
        var line = far - first;
        return before.All(m => Math.Abs(line.Unit.Cross(m.At - first)) <= OneLine * line.Length);
    }
}
