using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Output.Pages;

namespace BlockingTemplates.Output.Svg;

/// <summary>What a picture needs before it is drawn: the symbols and font weights in it, in order of first use; and ids not yet taken.</summary>
internal sealed class SvgParts : IPageSurface
{
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _symbolIds = new(StringComparer.Ordinal);

    public List<Symbol> Symbols { get; } = [];

    public SortedSet<FontWeight> Weights { get; } = [];

    public string IdOf(Symbol symbol) => _symbolIds[symbol.Name];

    /// <summary>An id of its own for each call: a kind, then the name's plain letters and digits in lower case, then a number if taken.</summary>
    public string NewId(string kind, string name)
    {
        var words = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        var stem = string.Join('-', words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Prepend(kind));
        var id = stem;
        for (var n = 2; !_ids.Add(id); n++) id = $"{stem}-{SvgNumber.Of(n)}";
        return id;
    }

    public void Draw(IReadOnlyList<PathStep> steps, Stroke? stroke, Fill? fill)
    {
    }

    public void Draw(TextElement text) => Weights.Add(text.Weight);

    public void Draw(Symbol symbol, Point at, double scale, double angleDegrees)
    {
        if (_symbolIds.ContainsKey(symbol.Name)) return;
        _symbolIds[symbol.Name] = NewId("symbol", symbol.Name);
        Symbols.Add(symbol);
        PageWalk.Draw(symbol, this);
    }

    public void DrawInside(Box clip, Action content) => content();

    public void DrawOn(Layer layer, Action content) => content();
}
