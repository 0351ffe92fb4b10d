using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>Where on a measuring picture a value of the project file belongs.</summary>
/// <param name="Path">The value's place in the project file.</param>
/// <param name="At">The place on the page, in millimetres.</param>
/// <param name="Away">The direction in which there is room for a field, length 1.</param>
/// <param name="Handle">How the value changes when the place is dragged, or null where it cannot be.</param>
public sealed record MeasuredPlace(string Path, Point At, Vector Away, DragHandle? Handle = null);
