namespace BlockingTemplates.Engine.Mats;

/// <summary>One way to lay the lattice under the piece, and what decides between ways with the same mats.</summary>
/// <param name="NearMarks">Marks within the seam clearance.</param>
/// <param name="BoxSize">Columns times rows of the field's box.</param>
/// <param name="TurnDegrees">Turn of the mats.</param>
/// <param name="ShiftX">Shift along x, in whole millimetres.</param>
/// <param name="ShiftY">Shift along y, in whole millimetres.</param>
internal readonly record struct MatPlacing(int NearMarks, int BoxSize, int TurnDegrees, int ShiftX, int ShiftY)
{
    /// <summary>Whether this one is to be preferred, both having the same number of mats.</summary>
    public bool IsBetterThan(MatPlacing other) => Key.CompareTo(other.Key) < 0;

    private (int, int, int, int, int) Key => (NearMarks, BoxSize, TurnDegrees, ShiftX, ShiftY);
}
