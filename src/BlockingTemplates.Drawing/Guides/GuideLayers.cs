using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The layers of the guide, named in words.</summary>
public static class GuideLayers
{
    /// <summary>Outline and marks.</summary>
    public static Layer OutlineAndMarks { get; } = new("outline and marks");

    /// <summary>Numbers.</summary>
    public static Layer Numbers { get; } = new("numbers");

    /// <summary>Lay line.</summary>
    public static Layer LayLine { get; } = new("lay line");

    /// <summary>Arrows of the pulls.</summary>
    public static Layer Arrows { get; } = new("arrows");

    /// <summary>Mats and their seams.</summary>
    public static Layer Mats { get; } = new("mats");

    /// <summary>The sheets of the guide with their names, hidden until they are switched on.</summary>
    public static Layer Sheets { get; } = new("sheets", IsShown: false);

    /// <summary>A squared grid in the maker's units, hidden until it is switched on.</summary>
    public static Layer Grid { get; } = new("grid", IsShown: false);

    /// <summary>By how much the cloth and its edges are stretched, hidden until it is switched on.</summary>
    public static Layer Stretch { get; } = new("stretch", IsShown: false);

    /// <summary>Where the edge will lie between the pins, hidden until it is switched on.</summary>
    public static Layer PredictedEdge { get; } = new("predicted edge", IsShown: false);
}
