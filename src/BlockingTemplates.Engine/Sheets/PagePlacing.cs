namespace BlockingTemplates.Engine.Sheets;

/// <summary>One way to lay the page grid.</summary>
/// <param name="Landscape">Whether the paper's long side runs along x.</param>
/// <param name="ShiftX">Shift along x from the lower left of the pinned outline's box, in whole millimetres.</param>
/// <param name="ShiftY">Shift along y, in whole millimetres.</param>
public readonly record struct PagePlacing(bool Landscape, int ShiftX, int ShiftY);
