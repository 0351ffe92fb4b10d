using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The form of a mark: a cross where the pin goes, and round it a form that tells the round.</summary>
public static class MarkForms
{
    private const double ArmMm = 5;
    private const double FormMm = 3;
    private static readonly string[] Names = ["double circle", "square", "circle", "diamond", "triangle", "triangle point down", "two bars"];

    /// <summary>The form of a round in words; the last round is a plain cross.</summary>
    public static string Name(int round, int lastRound) => round == lastRound && round > 2 ? "plain cross" : Names[Math.Min(round, Names.Length) - 1];

    /// <summary>The symbol of a round at full size.</summary>
    public static Symbol Of(int round, int lastRound)
    {
        var name = Name(round, lastRound);
        return new("mark-" + name.Replace(' ', '-'), ArmMm, [.. Cross(), .. Form(name)]);
    }

    /// <summary>The symbol of a comb's round, which stands at the middle of its bar: the form without the cross; null for a plain one.</summary>
    public static Symbol? OfComb(int round, int lastRound)
    {
        var name = Name(round, lastRound);
        Element[] form = [.. Form(name)];
        return form.Length == 0 ? null : new("comb-" + name.Replace(' ', '-'), ArmMm, form);
    }

    /// <summary>The symbol of a mark, or null where nothing but the bar of its comb is drawn.</summary>
    public static Symbol? Of(Engine.Pins.Mark mark, int lastRound)
    {
        ArgumentNullException.ThrowIfNull(mark);
        return mark.Bar is null ? Of(mark.Round, lastRound) : OfComb(mark.Round, lastRound);
    }

    private static IEnumerable<Element> Cross() =>
    [
        new PathElement(PathSteps.Line(new(-ArmMm, 0), new(ArmMm, 0)), GuideInk.Cross),
        new PathElement(PathSteps.Line(new(0, -ArmMm), new(0, ArmMm)), GuideInk.Cross),
    ];

    private static IEnumerable<Element> Form(string name) => name switch
    {
        "double circle" => [Circle(FormMm + 0.6), Circle(FormMm - 0.8)],
        "square" => [Ring([new(-FormMm, -FormMm), new(FormMm, -FormMm), new(FormMm, FormMm), new(-FormMm, FormMm)])],
        "circle" => [Circle(FormMm)],
        "diamond" => [Ring([new(-FormMm - 0.8, 0), new(0, -FormMm - 0.8), new(FormMm + 0.8, 0), new(0, FormMm + 0.8)])],
        "triangle" => [Ring(Triangle(1))],
        "triangle point down" => [Ring(Triangle(-1))],
        "two bars" => [Bar(2.2), Bar(-2.2)],
        _ => [],
    };

    private static IEnumerable<Point> Triangle(int up) => [new(-3.6, -2.1 * up), new(3.6, -2.1 * up), new(0, 4.2 * up)];

    private static PathElement Bar(double y) => new(PathSteps.Line(new(-FormMm, y), new(FormMm, y)), GuideInk.Form);

    private static PathElement Circle(double radius) => new(PathSteps.Circle(Point.Origin, radius), GuideInk.Form);

    private static PathElement Ring(IEnumerable<Point> points) => new(PathSteps.Polyline(points, true), GuideInk.Form);
}
