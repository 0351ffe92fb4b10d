using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using PdfSharp.Pdf;

namespace BlockingTemplates.Output.Pdf;

/// <summary>The layers of one document as optional content groups (ISO 32000-1, 8.11).</summary>
internal sealed class PdfLayers(PdfDocument document)
{
    private readonly Dictionary<Layer, PdfDictionary> _groups = [];
    private readonly PdfArray _inOrder = new(document);
    private readonly PdfArray _hidden = new(document);

    /// <summary>The group of a layer: one a document, in the order of first use.</summary>
    public PdfDictionary GroupOf(Layer layer)
    {
        if (_groups.TryGetValue(layer, out var group)) return group;
        group = new PdfDictionary(document);
        group.Elements.SetName("/Type", "/OCG");
        group.Elements["/Name"] = PdfTexts.Of(DrawnText.TitleOf(layer.Name));
        document.Internals.AddObject(group);
        _inOrder.Elements.Add(group.Reference!);
        if (!layer.IsShown)
            _hidden.Elements.Add(group.Reference!);
        return _groups[layer] = group;
    }

    /// <summary>Enters the groups in the catalog; nothing when there are none.</summary>
    public void Finish()
    {
        if (_groups.Count == 0) return;
        var configuration = new PdfDictionary(document);
        configuration.Elements["/Name"] = PdfTexts.Of("Layers");
        configuration.Elements.SetName("/BaseState", "/ON");
        configuration.Elements["/Order"] = _inOrder.Clone();
        if (_hidden.Elements.Count > 0)
            configuration.Elements["/OFF"] = _hidden;
        var properties = new PdfDictionary(document);
        properties.Elements["/OCGs"] = _inOrder;
        properties.Elements["/D"] = configuration;
        document.Internals.Catalog.Elements["/OCProperties"] = properties;
    }
}
