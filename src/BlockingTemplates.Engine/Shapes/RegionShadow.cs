namespace BlockingTemplates.Engine.Shapes;

/// <summary>The shadow of the region inside a ring with a border of round corners. Immutable.</summary>
/// <remarks>
/// Exact but for rounding: the border is made of true arcs, not of a many-sided polygon. The region is cut into pieces
/// whose upright cuts are single stretches; over such a piece, widened by the border, the heights reached inside a strip
/// run without a gap from the least to the greatest, and both lie on the piece's upper and lower line.
/// </remarks>
public sealed class RegionShadow : Shadow
{
    private readonly IReadOnlyList<UprightPiece> _pieces;
    private readonly double _radius;
    private readonly double _drawnIn;

    /// <summary>The region inside a ring, with a border.</summary>
    /// <param name="ring">A ring that does not cross itself, first point not repeated; millimetres.</param>
    /// <param name="borderMm">Width of the border, in millimetres, at least 0.</param>
    /// <param name="contactMm">
    /// What counts as contact only, in millimetres, at least 0: it is taken off the border, and where the border is
    /// narrower, the rest off the sides of the cells.
    /// </param>
    public RegionShadow(IReadOnlyList<Point> ring, double borderMm, double contactMm)
    {
        ArgumentNullException.ThrowIfNull(ring);
        ArgumentOutOfRangeException.ThrowIfNegative(borderMm);
        ArgumentOutOfRangeException.ThrowIfNegative(contactMm);
        _pieces = UprightPiece.Cut(ring);
        if (_pieces.Count == 0)
            throw new ArgumentException("A ring with no extent along x encloses nothing.", nameof(ring));
        _radius = Math.Max(0, borderMm - contactMm);
        _drawnIn = Math.Max(0, contactMm - borderMm);
        Bounds = Box.Around(ring).Grown(_radius);
    }

    /// <inheritdoc/>
    public override Box Bounds { get; }

    /// <inheritdoc/>
    public override void AddStrip(double left, double right, ICollection<Extent> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        (left, right) = (left + _drawnIn, right - _drawnIn);
        foreach (var piece in _pieces)
        {
            if (piece.Box.Left >= right + _radius || piece.Box.Right <= left - _radius)
                continue;
            var upper = piece.Upper.Highest(left, right, _radius);
            var lower = -piece.LowerUpsideDown.Highest(left, right, _radius);
            heights.Add(new(lower + _drawnIn, upper - _drawnIn));
        }
    }
}
