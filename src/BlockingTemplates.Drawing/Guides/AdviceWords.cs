using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The ways of holding one edge in words; a star marks what is more than is owned.</summary>
/// <param name="Edge">The edge's name.</param>
/// <param name="Pins">What single pins alone would take.</param>
/// <param name="Combs">What combs would take.</param>
/// <param name="Wires">What wires would take.</param>
/// <param name="Planned">How it is held in the plan.</param>
/// <param name="Suggested">How it is suggested to be held.</param>
/// <param name="Why">Why, in one sentence.</param>
public sealed record AdviceWords(string Edge, string Pins, string Combs, string Wires, string Planned, string Suggested, string Why)
{
    /// <summary>What the star says, or null where nothing is starred.</summary>
    public static string? Star(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Advice.SelectMany(a => a.Ways).Any(w => w.IsOwned == false) ? "*: more than you own." : null;
    }

    /// <summary>The advice of a plan, edge by edge.</summary>
    public static IReadOnlyList<AdviceWords> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var units = plan.Project.Units;
        string Say(double mm) => LengthWords.Of(Length.FromMillimetres(mm), units);
        return [.. plan.Advice.Select(a =>
        {
            var (pins, combs, wires) = (a.Ways[0], a.Ways[1], a.Ways[2]);
            var edge = plan.Pins.Edges[a.Edge];
            var comb = combs.Combs == 0 ? "none fits" : Starred(combs.IsOwned, combs.Pins == 0 ? HoldWords.Counted(combs.Combs, PinKind.Comb) : $"{HoldWords.Counted(combs.Combs, PinKind.Comb)}, {HoldWords.Counted(combs.Pins, PinKind.Pin)}");
            var wire = !wires.Serves ? "none serves" : Starred(wires.IsOwned, $"{Lengths(wires, Say)}; {(wires.PinsIfSoft < wires.Pins ? $"{Number(wires.PinsIfSoft)} to " : "")}{HoldWords.Counted(wires.Pins, PinKind.Pin)}");
            return new AdviceWords(edge.Name, Starred(pins.IsOwned, Number(pins.Pins)), comb, wire, HoldWords.Way(edge.Treatment.Hold), HoldWords.Way(a.Suggested), a.Why);
        })];
    }

    /// <summary>What the ways are counted for: the scallop alone where the cloth decided the spacing of single pins.</summary>
    public static string CountedFor(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (units, pins) = (plan.Project.Units, plan.Project.Pins);
        var scallop = $"for a scallop of {LengthWords.Of(pins.Scallop, units)}";
        return plan.Cloth is { DecidedSpacing: true } ? scallop
            : pins.Spacing is { } given ? $"single pins and combs by your spacing of {LengthWords.Of(given, units)}, wires {scallop}"
            : $"single pins and combs by the usual spacing, since the cloth was not computed, wires {scallop}";
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Starred(bool? isOwned, string words) => isOwned == false ? words + " *" : words;

    private static string Lengths(EdgeWay wires, Func<double, string> say) => string.Join(" + ", wires.Wires.GroupBy(w => w.LengthMm).Select(g =>
        g.Count() == 1 ? say(g.Key) : string.Create(CultureInfo.InvariantCulture, $"{g.Count()} x {say(g.Key)}")));
}
