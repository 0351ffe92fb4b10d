using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace BlockingTemplates.Reference.Tests.Guides;

// What a PDF's catalog says of the whole document.
internal static class PdfFacts
{
    // The name of every page by /PageLabels (ISO 32000-1, 12.4.2); ours are prefixes without numbers.
    public static IReadOnlyList<string> Labels(PdfDocument document)
    {
        var names = new string[document.NumberOfPages];
        Array.Fill(names, "");
        if (Catalog(document, "PageLabels") is DictionaryToken tree && Get(document, tree, "Nums") is ArrayToken nums)
        {
            for (var i = 0; i < nums.Length; i += 2)
            {
                var first = ((NumericToken)nums[i]).Int;
                var label = (DictionaryToken)Follow(document, nums[i + 1]);
                Array.Fill(names, Get(document, label, "P") is { } prefix ? Text(prefix) : "", first, names.Length - first);
            }
        }

        return names;
    }

    public static IReadOnlyList<string> Layers(PdfDocument document) =>
        Catalog(document, "OCProperties") is DictionaryToken properties && Get(document, properties, "OCGs") is ArrayToken groups
            ? [.. groups.Data.Select(g => Text(Get(document, (DictionaryToken)Follow(document, g), "Name")!))]
            : [];

    public static string? Preference(PdfDocument document, string name) =>
        Catalog(document, "ViewerPreferences") is DictionaryToken preferences ? Get(document, preferences, name) switch
        {
            NameToken said => said.Data,
            BooleanToken said => said.Data ? "true" : "false",
            _ => null,
        } : null;

    private static IToken? Catalog(PdfDocument document, string name) => Get(document, document.Structure.Catalog.CatalogDictionary, name);

    private static IToken? Get(PdfDocument document, DictionaryToken dictionary, string name) =>
        dictionary.TryGet(NameToken.Create(name), out var token) ? Follow(document, token) : null;

    private static IToken Follow(PdfDocument document, IToken token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static string Text(IToken token) => token switch { StringToken s => s.Data, HexToken h => h.Data, _ => throw new ArgumentException($"{token} is no text.", nameof(token)) };
}
