using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>A long line drawn over many sheets: each gets only the stretches it may show.</summary>
/// <param name="Points">Points of the line in order.</param>
/// <param name="IsClosed">Whether a stretch leads from the last point back to the first.</param>
/// <param name="Stroke">How it is drawn.</param>
public sealed record SeenLine(IReadOnlyList<Point> Points, bool IsClosed, Stroke Stroke)
{
    /// <summary>The line's stretches whose boxes touch a box, as one path; nothing where there are none.</summary>
    public IEnumerable<Element> In(Box box)
    {
        var near = box.Grown(Stroke.WidthMm + 1);
        List<PathStep> steps = [];
        var isOpen = false;
        var n = Points.Count;
        for (var i = 0; i < (IsClosed ? n : n - 1); i++)
        {
            Point a = Points[i], b = Points[(i + 1) % n];
            if (!SegmentBox.Meets(a, b, near))
            {
                isOpen = false;
                continue;
            }

            if (!isOpen)
                steps.Add(new(PathStepKind.Move, a));
            steps.Add(new(PathStepKind.Line, b));
            isOpen = true;
        }

        if (steps.Count > 0)
            yield return new PathElement(steps, Stroke);
    }
}
