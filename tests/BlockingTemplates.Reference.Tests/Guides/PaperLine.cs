using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Guides;

// A straight line read off a page, in millimetres of the paper.
internal sealed record PaperLine(Point From, Point To, double WidthMm, bool IsDashed)
{
    private const double StraightMm = 0.001;

    public double LengthMm => From.DistanceTo(To);

    public Point Middle => From.Toward(To, 0.5);

    public bool IsUpright => Math.Abs(From.X - To.X) < StraightMm;

    public bool IsLevel => Math.Abs(From.Y - To.Y) < StraightMm;
}
