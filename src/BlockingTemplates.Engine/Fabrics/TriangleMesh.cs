using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The unblocked cloth cut into triangles; millimetres. Immutable.</summary>
public sealed class TriangleMesh
{
    /// <summary>A mesh of nodes and counter-clockwise triangles.</summary>
    /// <param name="nodes">Where the nodes lie; each belongs to a triangle.</param>
    /// <param name="triangles">Triangles of positive area.</param>
    /// <param name="rim">The nodes on the outline, once round from the first corner: rim node i is node i. Empty where no
    /// stitch of edge is to be held.</param>
    /// <param name="rimLengthMm">Arc length of the outline, in millimetres; 0 for an empty rim.</param>
    public TriangleMesh(IReadOnlyList<Point> nodes, IReadOnlyList<Triangle> triangles, IReadOnlyList<RimNode> rim, double rimLengthMm)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        ArgumentNullException.ThrowIfNull(triangles);
        ArgumentNullException.ThrowIfNull(rim);
        if (rim.Count > nodes.Count || (rim.Count > 0) != (rimLengthMm > 0))
            throw new ArgumentException("The rim does not fit the nodes.", nameof(rim));
        var used = new bool[nodes.Count];
        var smallest = 180.0;
        foreach (var (a, b, c) in triangles)
        {
            used[a] = used[b] = used[c] = true;
            if (!((nodes[b] - nodes[a]).Cross(nodes[c] - nodes[a]) > 0))
                throw new ArgumentException("A triangle is empty or clockwise.", nameof(triangles));
            smallest = Math.Min(smallest, SmallestAngle(nodes[a], nodes[b], nodes[c]));
        }

        if (!used.All(u => u))
            throw new ArgumentException("A node belongs to no triangle.", nameof(nodes));
        (Nodes, Triangles, Rim, RimLengthMm, SmallestAngleDegrees) = (nodes, triangles, rim, rimLengthMm, smallest);
    }

    /// <summary>Where the nodes lie in the unblocked cloth.</summary>
    public IReadOnlyList<Point> Nodes { get; }

    /// <summary>The triangles.</summary>
    public IReadOnlyList<Triangle> Triangles { get; }

    /// <summary>The first nodes of the mesh, those on the outline, once round.</summary>
    public IReadOnlyList<RimNode> Rim { get; }

    /// <summary>Arc length of the outline, in millimetres.</summary>
    public double RimLengthMm { get; }

    /// <summary>The smallest angle of any triangle, in degrees.</summary>
    public double SmallestAngleDegrees { get; }

    /// <summary>The smallest angle of a triangle, in degrees.</summary>
    public static double SmallestAngle(Point a, Point b, Point c)
    {
        return Math.Min(At(a, b, c), Math.Min(At(b, c, a), At(c, a, b))) * 180 / Math.PI;

        static double At(Point p, Point q, Point r) => Math.Atan2(Math.Abs((q - p).Cross(r - p)), (q - p).Dot(r - p));
    }

    /// <summary>Sum of the triangles' areas, in square millimetres.</summary>
    public double Area() => Triangles.Sum(t => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]) / 2);
}
