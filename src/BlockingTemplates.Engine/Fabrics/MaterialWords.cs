using System.Globalization;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Tells in the maker's words where it is known from how much the cloth gives.</summary>
internal static class MaterialWords
{
    /// <summary>What would be better than a guess.</summary>
    public const string TryStrips = " Three damp strips and a weight would tell how your own cloth gives.";

    /// <summary>The kind of cloth decided.</summary>
    public static string ByKind(ClothKind kind)
    {
        var of = kind.Kind is { } known ? $"such cloth ({known.ToString().ToLowerInvariant()})" : "cloth of which no kind is given";
        return kind.IsMeasured
            ? $"How the cloth gives is taken from published measurements of {of}: {kind.Source}."
            : $"How the cloth gives is an assumption about {of}, with a wide range, since no measurement of it was found: {kind.Source}.";
    }

    /// <summary>The swatch decided the ratio of along and across.</summary>
    public static string BySwatch(TakenStretch took) => Text(
        $"How the cloth gives along the rows against across them is taken from your swatch, which stretched by {100 * took.Along:0} % along and {100 * took.Across:0} % across; hands may have pulled it up to {ClothMaterials.UnevenHands:0} times as hard one way as the other. The rest is by the kind of cloth.");

    /// <summary>The ratios and how far they may be off.</summary>
    public static string Ratios(Spread alongOverAcross, ClothKind kind) => Text(
        $" Along the rows it is taken to be {Range(alongOverAcross)} times as stiff as across; its narrowing, on a scale from 0 to 1, {Range(kind.Narrowing)}; its stiffness against being pushed askew {Range(kind.ShearShare)} times the mean of those along and across.");

    /// <summary>The strips decided.</summary>
    public static string ByStrips(StripTest strips, OrthotropicCloth asRead, IReadOnlyList<OrthotropicCloth> readings)
    {
        var along = Span(asRead.EAlong, readings.Select(r => r.EAlong));
        var across = Span(asRead.EAcross, readings.Select(r => r.EAcross));
        var shear = Span(asRead.Shear, readings.Select(r => r.Shear));
        var narrowing = new Spread(readings.Min(r => r.Poisson), asRead.Poisson, readings.Max(r => r.Poisson));
        return Text(
            $"How the cloth gives is measured by your three damp strips with {strips.Grams:0.#} g, readings off by {strips.Reading.Millimetres:0.##} mm allowed for: along the rows {Newtons(along)}, across {Newtons(across)}, askew {Newtons(shear)} (newtons per metre of width); pulled along it narrows by {Range(narrowing)} of what it lengthens.");
    }

    private static Spread Span(double likely, IEnumerable<double> all) => new(all.Min(), likely, all.Max());

    private static string Range(Spread s) => Text($"{s.Likely:0.##} ({s.Least:0.##} to {s.Most:0.##})");

    private static string Newtons(Spread s) => Text($"{s.Likely:0.#} ({s.Least:0.#} to {s.Most:0.#})");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
