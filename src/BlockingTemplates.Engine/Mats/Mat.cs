using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>One mat of the field.</summary>
/// <param name="Name">Column letter and row number, such as B3; row 1 nearest the maker.</param>
/// <param name="Column">Column from the left, from 0.</param>
/// <param name="Row">Row from the maker, from 0.</param>
/// <param name="At">Its lower left, in the frame.</param>
public sealed record Mat(string Name, int Column, int Row, Point At);
