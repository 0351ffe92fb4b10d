namespace BlockingTemplates.Engine.Shapes;

/// <summary>A shape seen strip by strip: the shadow that its part in an upright strip throws on the y axis. Immutable.</summary>
/// <remarks>
/// A rectangle of a strip's full width meets the shape exactly when its heights meet the strip's shadow; that makes
/// counting the cells of a lattice under every shift cheap. What counts of points on a strip's sides and on the
/// ends of its heights, each shape says for itself.
/// </remarks>
public abstract class Shadow
{
    /// <summary>A box that holds the shape.</summary>
    public abstract Box Bounds { get; }

    /// <summary>Adds the heights of the shape's part between two abscissas, as stretches that may overlap.</summary>
    /// <param name="left">Left side of the strip.</param>
    /// <param name="right">Right side of the strip, above the left one.</param>
    /// <param name="heights">Where the stretches are added.</param>
    public abstract void AddStrip(double left, double right, ICollection<Extent> heights);
}
