using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Pages;

/// <summary>One step of a path.</summary>
/// <param name="Kind">What the step does.</param>
/// <param name="To">Where it ends (not used by a closing step).</param>
/// <param name="Control1">First control point of a cubic Bézier step.</param>
/// <param name="Control2">Second control point of a cubic Bézier step.</param>
public readonly record struct PathStep(PathStepKind Kind, Point To = default, Point Control1 = default, Point Control2 = default);
