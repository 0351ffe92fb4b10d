using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Pages;

/// <summary>Where content stands on its page: scaled about its origin, then moved.</summary>
internal readonly record struct Placement(double ScaleX, double ScaleY, Point At)
{
    public static Placement Identity => new(1, 1, Point.Origin);

    /// <summary>The scale of widths, texts and symbols, which are not drawn askew: the geometric mean.</summary>
    public double Scale => ScaleX == ScaleY ? ScaleX : Math.Sqrt(ScaleX * ScaleY);

    public Point Map(Point p) => new(At.X + (ScaleX * p.X), At.Y + (ScaleY * p.Y));

    public Box Map(Box b) => new(At.X + (ScaleX * b.Left), At.Y + (ScaleY * b.Lower), At.X + (ScaleX * b.Right), At.Y + (ScaleY * b.Upper));

    /// <summary>Where content stands that is placed inside this.</summary>
    public Placement Then(PlacedElement inner) => new(ScaleX * inner.Scale, ScaleY * (inner.ScaleY ?? inner.Scale), Map(inner.At));

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
