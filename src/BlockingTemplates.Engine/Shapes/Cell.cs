namespace BlockingTemplates.Engine.Shapes;

/// <summary>A cell of a lattice of equal upright rectangles.</summary>
/// <param name="Column">Column to the right; may be negative.</param>
/// <param name="Row">Row upward; may be negative.</param>
public readonly record struct Cell(int Column, int Row)
{
    /// <summary>The four cells that share a side: left, right, below, above.</summary>
    public IEnumerable<Cell> Beside =>
        [new(Column - 1, Row), new(Column + 1, Row), new(Column, Row - 1), new(Column, Row + 1)];
}
