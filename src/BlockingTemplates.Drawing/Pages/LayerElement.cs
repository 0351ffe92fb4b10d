namespace BlockingTemplates.Drawing.Pages;

/// <summary>Things drawn on a named layer. Layers are not nested.</summary>
/// <param name="Layer">The layer; equal layers in one document are one layer.</param>
/// <param name="Content">What is drawn on it, in drawing order.</param>
public sealed record LayerElement(Layer Layer, IReadOnlyList<Element> Content) : Element;
