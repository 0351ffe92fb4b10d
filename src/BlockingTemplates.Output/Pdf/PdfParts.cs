using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Output.Pages;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BlockingTemplates.Output.Pdf;

/// <summary>What the pages of one document share: fonts, layers, and symbols drawn once as forms.</summary>
internal sealed class PdfParts(PdfDocument document)
{
    private readonly Dictionary<(string Name, double Scale), XForm> _symbols = [];

    public PdfDocument Document => document;

    public PdfFonts Fonts { get; } = new();

    public PdfLayers Layers { get; } = new(document);

    /// <summary>The form of a symbol at a scale; its middle is the symbol's origin.</summary>
    /// <remarks>One for each scale, of which there are few: PDFsharp scales a form with four decimals only.</remarks>
    public XForm FormOf(Symbol symbol, double scale)
    {
        if (_symbols.TryGetValue((symbol.Name, scale), out var form)) return form;
        var half = Math.Max(scale * symbol.HalfSizeMm, 0.2); // PDFsharp takes no form under one point
        var side = PdfPoints.Of(2 * half);
        var whole = new XRect(0, 0, side, side);
        form = new XForm(document, whole);
        using (var graphics = XGraphics.FromForm(form))
        {
            PageWalk.Draw(symbol, new PdfSurface(this, graphics, new PdfPoints(half, -half), whole), scale);
        }

        return _symbols[(symbol.Name, scale)] = form;
    }
}
