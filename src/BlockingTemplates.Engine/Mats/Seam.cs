using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>The upright or level line between two mats.</summary>
/// <param name="First">The mat to the left or nearer the maker.</param>
/// <param name="Second">The other mat.</param>
/// <param name="From">Its left or lower end.</param>
/// <param name="To">Its other end.</param>
internal sealed record Seam(Cell First, Cell Second, Point From, Point To)
{
    private bool Upright => First.Row == Second.Row;

    /// <summary>Distance of a point from the seam, in millimetres.</summary>
    public double DistanceTo(Point p)
    {
        var beside = Math.Max(0, Math.Max(From.X - p.X, p.X - To.X));
        var above = Math.Max(0, Math.Max(From.Y - p.Y, p.Y - To.Y));
        return new Vector(beside, above).Length;
    }

    /// <summary>Whether a straight line passes from one side of the seam to the other (over an end counts).</summary>
    public bool IsCrossedBy(Point start, Point end)
    {
        var (before, after) = Upright ? (start.X - From.X, end.X - From.X) : (start.Y - From.Y, end.Y - From.Y);
        if (before * after >= 0)
            return false;
        var at = start.Toward(end, before / (before - after));
        return Upright ? at.Y >= From.Y && at.Y <= To.Y : at.X >= From.X && at.X <= To.X;
    }
}
