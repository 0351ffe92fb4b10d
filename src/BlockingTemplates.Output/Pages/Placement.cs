using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Pages;

/// <summary>Where content stands on its page: scaled about its origin, then moved.</summary>
internal readonly record struct Placement(double Scale, Point At)
{
    public static Placement Identity => new(1, Point.Origin);

    public Point Map(Point p) => new(At.X + (Scale * p.X), At.Y + (Scale * p.Y));

    public Box Map(Box b) => new(At.X + (Scale * b.Left), At.Y + (Scale * b.Lower), At.X + (Scale * b.Right), At.Y + (Scale * b.Upper));

    /// <summary>Where content stands that is placed inside this.</summary>
    public Placement Then(PlacedElement inner) => new(Scale * inner.Scale, Map(inner.At));

    public IReadOnlyList<PathStep> Map(IReadOnlyList<PathStep> steps)
    {
        if (this == Identity) return steps;
        var mapped = new PathStep[steps.Count];
        for (var i = 0; i < mapped.Length; i++)
        {
            var s = steps[i];
            mapped[i] = new(s.Kind, Map(s.To), Map(s.Control1), Map(s.Control2));
        }

        return mapped;
    }

    public Stroke? Map(Stroke? stroke)
    {
        if (stroke is null || Scale == 1) return stroke;
        var scale = Scale;
        return stroke with { WidthMm = scale * stroke.WidthMm, DashMm = stroke.DashMm?.Select(d => scale * d).ToArray() };
    }
}
