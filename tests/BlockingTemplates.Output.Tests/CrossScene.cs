using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Tests;

/// <summary>A page of crosses at known places: plain lines, symbols, turned, scaled, on layers, placed in each other.</summary>
public static class CrossScene
{
    public const double WidthMm = 297;
    public const double HeightMm = 210;
    public const double Arm = 4;

    public static Symbol Cross { get; } = new(
        "cross",
        Arm + 0.5,
        [
            new PathElement(PathSteps.Line(new(-Arm, 0), new(Arm, 0)), new Stroke(0.4)),
            new PathElement(PathSteps.Line(new(0, -Arm), new(0, Arm)), new Stroke(0.4)),
        ]);

    /// <summary>Where the crosses are, worked out by hand: middle, half length, turn in degrees.</summary>
    public static IReadOnlyList<(Point At, double Arm, double Angle)> Places { get; } =
    [
        (new(20, 30), 4, 0),
        (new(123.456, 78.901), 4, 0),
        (new(250, 180), 4, 30),
        (new(50, 150), 4, -45),          // on a layer
        (new(80, 150), 4, 0),            // on a layer
        (new(100 + (2 * 10), 20 + (2 * 10)), 8, 15),  // placed twice as large
        (new(200 + (0.5 * 30), 100 + (0.5 * 40)), 2, 0), // half as large, on a layer, inside a clip
        (new(200 + (0.5 * (10 + (3 * 10))), 100 + (0.5 * (-20 + (3 * 5)))), 6, 90), // placed in a placed one: 0.5 of 3 times
    ];

    public static Page Page { get; } = new(
        WidthMm,
        HeightMm,
        [
            new SymbolElement(Cross, new(20, 30)),
            new PathElement(PathSteps.Line(new(123.456 - Arm, 78.901), new(123.456 + Arm, 78.901)), new Stroke(0.4)),
            new PathElement(PathSteps.Line(new(123.456, 78.901 - Arm), new(123.456, 78.901 + Arm)), new Stroke(0.4)),
            new SymbolElement(Cross, new(250, 180), 30),
            new LayerElement(new Layer("Marks"), [new SymbolElement(Cross, new(50, 150), -45), new SymbolElement(Cross, new(80, 150))]),
            new PlacedElement([new SymbolElement(Cross, new(10, 10), 15)], new(100, 20), 2),
            new PlacedElement(
                [
                    new LayerElement(new Layer("Lay line"), [new SymbolElement(Cross, new(30, 40))]),
                    new PlacedElement([new SymbolElement(Cross, new(10, 5), 90)], new(10, -20), 3),
                ],
                new(200, 100),
                0.5,
                new Box(195, 80, 260, 140)),
        ],
        "crosses");

    /// <summary>The two lines of every cross, worked out from <see cref="Places"/>.</summary>
    public static IReadOnlyList<Segment> Lines { get; } = [.. Places.SelectMany(p => LinesOf(p.At, p.Arm, p.Angle))];

    public static IEnumerable<Segment> LinesOf(Point at, double arm, double angleDegrees)
    {
        var along = arm * Vector.AtAngle(angleDegrees * Math.PI / 180);
        yield return new(at - along, at + along);
        yield return new(at - along.TurnedLeft, at + along.TurnedLeft);
    }
}
