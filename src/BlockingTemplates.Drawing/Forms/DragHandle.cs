using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Forms;

/// <summary>A place of a measuring picture that can be dragged along a line: the value is how far it lies from the line's start.</summary>
/// <param name="From">Where the value is 0, on the page.</param>
/// <param name="Along">The direction in which it grows, length 1.</param>
/// <param name="MmPerPageMm">Millimetres of the value for one of the page, above 0.</param>
/// <param name="ValueMm">The value now, in millimetres.</param>
/// <param name="IsSigned">Whether it may be below 0.</param>
public sealed record DragHandle(Point From, Vector Along, double MmPerPageMm, double ValueMm, bool IsSigned);
