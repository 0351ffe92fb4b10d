using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Settling;

/// <summary>The stretch of the pinned cloth about one place: means over its cell.</summary>
/// <param name="Column">Column of its cell, from 0.</param>
/// <param name="Row">Row of its cell, from 0 upward.</param>
/// <param name="At">The cell's middle, in the frame.</param>
/// <param name="Along">Length along the rows over rest length, less 1.</param>
/// <param name="Across">Length across the rows over rest length, less 1.</param>
/// <param name="State">How most of the cloth carries its pull there.</param>
public readonly record struct StretchCell(int Column, int Row, Point At, double Along, double Across, ClothState State);
