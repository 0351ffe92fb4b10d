using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Cli.Commands;

/// <summary>What the printer check's bars measured, as the command line says it: two lengths with an x between, in the millimetres the bars are named in unless a unit is written.</summary>
internal static class MeasuredBars
{
    /// <summary>How it is written.</summary>
    public const string Example = "149.5x239";

    /// <summary>The two lengths, short side first; or false and why not.</summary>
    public static bool TryRead(string said, out (Length Short, Length Long) bars, out string? why)
    {
        (bars, why) = (default, null);
        var sides = said.Split(['x', 'X', '×']);
        if (sides.Length != 2 || !LengthText.TryRead(sides[0], LengthUnit.Millimetres, out var narrow, out why) || !LengthText.TryRead(sides[1], LengthUnit.Millimetres, out var wide, out why))
            return false;
        bars = (narrow, wide);
        return true;
    }
}
