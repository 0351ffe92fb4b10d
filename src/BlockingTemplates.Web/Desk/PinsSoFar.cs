namespace BlockingTemplates.Web.Desk;

/// <summary>How far the pinning of one piece has come. Immutable.</summary>
/// <param name="Change">Counts every change, so that the newer of two is known.</param>
/// <param name="Marks">How many marks the plan has that is pinned by.</param>
/// <param name="At">The mark that is next.</param>
/// <param name="Set">Numbers of the pins set.</param>
/// <param name="Out">Numbers of the pins taken out again.</param>
/// <param name="TakingOut">Whether pins are being taken out.</param>
/// <param name="Part">Which of the project's plans is pinned by, from 0.</param>
/// <param name="Wires">How many wires the plan has; they are in from the beginning, and are numbered on after the marks.</param>
internal sealed record PinsSoFar(long Change, int Marks, int At, IReadOnlyList<int> Set, IReadOnlyList<int> Out, bool TakingOut, int Part = 0, int Wires = 0)
{
    /// <summary>The beginning of a plan's pinning.</summary>
    public static PinsSoFar Begin(int marks, int wires, int part, long change) => new(change, marks, 1, [], [], false, part, wires);

    /// <summary>The state after a step, or null where there is no such step.</summary>
    /// <remarks>A step names its pin, so that the same step from two screens does no harm.</remarks>
    /// <param name="step">set, unset, go, out, in, dry (all is pinned and dries, pins come out next) or pin (back to pinning).</param>
    /// <param name="number">The pin's number, or for out and in a wire's after the marks; not used by dry and pin.</param>
    public PinsSoFar? After(string step, int number)
    {
        if (step is not ("dry" or "pin") && (number < 1 || number > (step is "out" or "in" ? Marks + Wires : Marks)))
            return null;
        var next = step switch
        {
            "set" => this with { Set = With(Set, number), At = NextAfter(number, With(Set, number)) },
            "unset" => this with { Set = Without(Set, number), Out = Without(Out, number), At = number },
            "go" => this with { At = number },
            "out" when number > Marks || Set.Contains(number) => this with { Out = With(Out, number) },
            "in" => this with { Out = Without(Out, number) },
            "dry" => this with { TakingOut = true },
            "pin" => this with { TakingOut = false },
            _ => null,
        };
        return next is null ? null : next with { Change = Change + 1 };
    }

    /// <summary>The next mark along that has no pin; the mark itself where all have one.</summary>
    private int NextAfter(int number, IReadOnlyList<int> set)
    {
        for (var i = 1; i <= Marks; i++)
        {
            var candidate = ((number - 1 + i) % Marks) + 1;
            if (!set.Contains(candidate))
                return candidate;
        }

        return number;
    }

    private static List<int> With(IReadOnlyList<int> numbers, int number) => [.. numbers.Append(number).Distinct().Order()];

    private static List<int> Without(IReadOnlyList<int> numbers, int number) => [.. numbers.Where(n => n != number)];
}
