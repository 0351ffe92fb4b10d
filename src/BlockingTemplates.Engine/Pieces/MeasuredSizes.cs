using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The named measurements of one piece, found whole: all that are needed, and none given in two ways.</summary>
public sealed class MeasuredSizes
{
    private readonly Dictionary<string, double> _lengths;

    private MeasuredSizes(Dictionary<string, double> lengths) => _lengths = lengths;

    /// <summary>A measurement in millimetres; 0 where it was left out.</summary>
    public double this[string name] => _lengths.GetValueOrDefault(name);

    /// <summary>Whether a measurement was given.</summary>
    public bool Has(string name) => _lengths.ContainsKey(name);

    /// <summary>The measurements, or null after adding a problem for each that is missing or given in two ways.</summary>
    /// <param name="names">The measurements asked for.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="findings">Takes problems.</param>
    public static MeasuredSizes? Read(IReadOnlyList<SizeName> names, Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(findings);
        if (measured.Unreadable.Contains(measured.Path))
            return null;
        var isWhole = !names.Any(n => IsUnreadable(n, measured));
        foreach (var size in names.Where(n => n.IsAsked))
            isWhole &= IsGivenOnce(size, [.. names.Where(n => n.InsteadOf == size.Name)], measured, findings);
        return isWhole
            ? new(names.Where(n => measured.Sizes.ContainsKey(n.Name)).ToDictionary(n => n.Name, n => measured.Sizes[n.Name].Millimetres))
            : null;
    }

    private static bool IsGivenOnce(SizeName size, IReadOnlyList<SizeName> others, Measurements measured, Findings findings)
    {
        var given = others.Where(o => IsThere(o, measured)).ToList();
        if (IsThere(size, measured))
        {
            if (given.Count > 0)
                findings.Problem($"{measured.Path}.{given[0].Name}", $"The {measured.State} size is given twice: by {size.Words} and by {Listed(given)}.", "Keep the one you trust more and take the other out.");
            return given.Count == 0;
        }

        if (given.Count == 0)
        {
            var otherWay = others.Count > 0 ? $" Or give {Listed(others)} instead." : "";
            findings.Problem($"{measured.Path}.{size.Name}", $"The {measured.State} {size.Words} is missing.", $"Write it: {size.HowToTake}.{otherWay}");
            return false;
        }

        foreach (var missing in others.Except(given))
            findings.Problem($"{measured.Path}.{missing.Name}", $"The {measured.State} {missing.Words} is missing beside {Listed(given)}.", $"Write it: {missing.HowToTake}.");
        return given.Count == others.Count;
    }

    private static bool IsThere(SizeName size, Measurements measured) => measured.Sizes.ContainsKey(size.Name) || IsUnreadable(size, measured);

    private static bool IsUnreadable(SizeName size, Measurements measured) => measured.Unreadable.Contains($"{measured.Path}.{size.Name}");

    private static string Listed(IEnumerable<SizeName> sizes) => string.Join(" and ", sizes.Select(s => s.Words));
}
