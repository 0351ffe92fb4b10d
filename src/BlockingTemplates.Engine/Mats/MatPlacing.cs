namespace BlockingTemplates.Engine.Mats;

/// <summary>One way to lay the lattice under the piece, and what decides between ways.</summary>
/// <param name="Mats">How many mats it takes.</param>
/// <param name="NearMarks">Marks within the seam clearance.</param>
/// <param name="BoxSize">Columns times rows of the field's box.</param>
/// <param name="TurnDegrees">Turn of the mats.</param>
/// <param name="ShiftX">Shift along x, in whole millimetres.</param>
/// <param name="ShiftY">Shift along y, in whole millimetres.</param>
internal sealed record MatPlacing(int Mats, int NearMarks, int BoxSize, int TurnDegrees, int ShiftX, int ShiftY)
{
    /// <summary>Whether this one is to be preferred.</summary>
    public bool IsBetterThan(MatPlacing? other) => other is null || Key.CompareTo(other.Key) < 0;

    /// <summary>Whether no way at a later turn can be preferred, as none takes fewer mats than a bound.</summary>
    public bool IsUnbeatable(int fewestMats) => Mats <= fewestMats && NearMarks == 0 && BoxSize == Mats;

    private (int, int, int, int, int, int) Key => (Mats, NearMarks, BoxSize, TurnDegrees, ShiftX, ShiftY);
}
