namespace BlockingTemplates.Engine.Mats;

/// <summary>The fewest mats that carry the piece, and where each mark lies on them. Immutable.</summary>
/// <remarks>In the frame: its origin is the lower left of the mat field.</remarks>
public sealed record MatLayout
{
    /// <summary>Pitch along x as laid, in millimetres.</summary>
    public required double PitchX { get; init; }

    /// <summary>Pitch along y as laid, in millimetres.</summary>
    public required double PitchY { get; init; }

    /// <summary>Turn of the mats relative to the piece, counter-clockwise, in degrees from 0 to 179.</summary>
    public required double TurnDegrees { get; init; }

    /// <summary>Turn of the piece in the frame, counter-clockwise, in degrees from -45 to 44; 0 unless the mats turn freely.</summary>
    /// <remarks>It and <see cref="TurnDegrees"/> together are a whole number of quarter turns.</remarks>
    public double PieceTurnDegrees { get; init; }

    /// <summary>The mats, by row from the maker, then by column.</summary>
    public required IReadOnlyList<Mat> Mats { get; init; }

    /// <summary>Columns of the field's box.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows of the field's box.</summary>
    public required int Rows { get; init; }

    /// <summary>The marks' places, in the order of their numbers.</summary>
    public required IReadOnlyList<Seat> Seats { get; init; }

    /// <summary>Seams that a pull crosses within 100 mm of its mark, to be taped underneath.</summary>
    public required IReadOnlyList<CrossedSeam> CrossedSeams { get; init; }
}
