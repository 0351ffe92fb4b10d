using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>Pins, combs and wires in words.</summary>
public static class HoldWords
{
    /// <summary>The kind of a mark in one word, as in plan.json and pins.csv.</summary>
    public static string Kind(PinKind kind) => kind switch
    {
        PinKind.Pin => "pin",
        PinKind.Comb => "comb",
        PinKind.Wire => "wire",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>A way of holding an edge in one word.</summary>
    public static string Way(Holding hold) => hold switch
    {
        Holding.Pins => "pins",
        Holding.Comb => "combs",
        Holding.Wire => "wires",
        Holding.None => "nothing",
        _ => throw new ArgumentOutOfRangeException(nameof(hold)),
    };

    /// <summary>What a plan takes, such as "31 pins, 4 combs, 2 wires".</summary>
    public static string Counts(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return string.Join(", ", Totals(plan).Select(t => Counted(t.Count, t.Kind)));
    }

    /// <summary>The lines that are filled in when the piece is unpinned, one for each kind.</summary>
    public static string CountBack(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return string.Join("   ", Totals(plan).Select(t => string.Create(CultureInfo.InvariantCulture, $"{Title(t.Kind)}s out: {t.Count}.  Counted back: _______ of {t.Count}.")));
    }

    /// <summary>What is counted, such as "pins" or "stiff wires of 90 cm".</summary>
    public static string Name(Supply supply, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return supply is { Form: { } form, LengthMm: { } length }
            ? $"{Form(form)} of {LengthWords.Of(Length.FromMillimetres(length), units)}"
            : Kind(supply.Kind) + "s";
    }

    /// <summary>A form of wire, such as "stiff wires, 1.5 mm".</summary>
    public static string Form(WireForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return string.Create(CultureInfo.InvariantCulture, $"{(form.Kind == WireKind.Stiff ? "stiff" : "flexible")} wires, {form.Diameter.Millimetres:0.##} mm,");
    }

    /// <summary>Whether anything but single pins holds the piece.</summary>
    public static bool HasMoreThanPins(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Supplies.Any(s => s.Kind != PinKind.Pin);
    }

    /// <summary>So many of a kind, such as "1 comb".</summary>
    public static string Counted(int count, PinKind kind) => string.Create(CultureInfo.InvariantCulture, $"{count} {Kind(kind)}{(count == 1 ? "" : "s")}");

    private static IEnumerable<(PinKind Kind, int Count)> Totals(Plan plan) => plan.Supplies.GroupBy(s => s.Kind).Select(g => (g.Key, g.Sum(s => s.LayOut)));

    private static string Title(PinKind kind) => char.ToUpperInvariant(Kind(kind)[0]) + Kind(kind)[1..];
}
