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
