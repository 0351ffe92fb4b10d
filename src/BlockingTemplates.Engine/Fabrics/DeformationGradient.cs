using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Where a unit step along and a unit step across the rows of the unblocked cloth go.</summary>
internal readonly record struct DeformationGradient(Vector Along, Vector Across)
{
    /// <summary>Green-Lagrange strain in the cloth's axes.</summary>
    internal PlaneTensor Strain => new((Along.Dot(Along) - 1) / 2, (Across.Dot(Across) - 1) / 2, Along.Dot(Across) / 2);

    /// <summary>Sum of the squared differences of all four components.</summary>
    internal double SquaredDistanceTo(DeformationGradient other)
    {
        var (u, v) = (Along - other.Along, Across - other.Across);
        return u.Dot(u) + v.Dot(v);
    }
}
