using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Drawing.Text;

/// <summary>The font files that everything is set in, as shipped inside this assembly.</summary>
/// <remarks>Atkinson Hyperlegible Next, static TrueType, SIL Open Font License 1.1. Safe from any thread.</remarks>
public static class FontFiles
{
    /// <summary>Name of the font family.</summary>
    public const string FamilyName = "Atkinson Hyperlegible Next";

    private static readonly Lazy<byte[]> Regular = new(() => Read("AtkinsonHyperlegibleNext_400Regular.ttf"));
    private static readonly Lazy<byte[]> Bold = new(() => Read("AtkinsonHyperlegibleNext_700Bold.ttf"));

    /// <summary>The bytes of the TrueType file of a weight.</summary>
    public static ReadOnlyMemory<byte> Of(FontWeight weight) => weight switch
    {
        FontWeight.Regular => Regular.Value,
        FontWeight.Bold => Bold.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(weight)),
    };

    private static byte[] Read(string name)
    {
        using var stream = typeof(FontFiles).Assembly.GetManifestResourceStream("fonts/" + name)
            ?? throw new InvalidOperationException($"The font {name} is not in the assembly.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
