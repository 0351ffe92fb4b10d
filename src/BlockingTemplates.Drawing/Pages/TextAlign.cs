namespace BlockingTemplates.Drawing.Pages;

/// <summary>Which point of a text's baseline stands at its place.</summary>
public enum TextAlign
{
    /// <summary>The start.</summary>
    Left,

    /// <summary>The middle of the advance width.</summary>
    Centre,

    /// <summary>The end.</summary>
    Right,
}
