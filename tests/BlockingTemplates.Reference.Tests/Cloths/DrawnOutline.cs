using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Cloths;

// Scale and place of a picture, found from the outline drawn in it.
internal sealed class DrawnOutline
{
    private readonly Box _frame;

    public DrawnOutline(PathElement path, Outline pinned)
    {
        _frame = Box.Around(pinned.Ring(0.5));
        Box = Box.Around(path.Steps.Where(s => s.Kind != PathStepKind.Close).Select(s => s.To));
        Assert.Equal(_frame.Height / _frame.Width, Box.Height / Box.Width, 1e-6);
    }

    public Box Box { get; }

    public double Scale => Box.Width / _frame.Width;

    public Point On(Point frame) => new(Box.Left + (Scale * (frame.X - _frame.Left)), Box.Lower + (Scale * (frame.Y - _frame.Lower)));

    public Point Off(Point page) => new(_frame.Left + ((page.X - Box.Left) / Scale), _frame.Lower + ((page.Y - Box.Lower) / Scale));
}
