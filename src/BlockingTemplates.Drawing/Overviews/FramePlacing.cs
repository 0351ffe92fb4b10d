using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Overviews;

/// <summary>How a box of the frame is fitted into a box of a page, to scale and centred.</summary>
/// <param name="Scale">Page millimetres for one of the frame.</param>
/// <param name="Shift">Where the frame's origin stands on the page.</param>
public readonly record struct FramePlacing(double Scale, Vector Shift)
{
    /// <summary>The largest placing of a frame box in a page box.</summary>
    public static FramePlacing Fit(Box frame, Box page)
    {
        var scale = Math.Min(page.Width / frame.Width, page.Height / frame.Height);
        return new(scale, new(page.Centre.X - (scale * frame.Centre.X), page.Centre.Y - (scale * frame.Centre.Y)));
    }

    /// <summary>A place of the frame on the page.</summary>
    public Point On(Point frame) => new((Scale * frame.X) + Shift.X, (Scale * frame.Y) + Shift.Y);

    /// <summary>The place of the frame that stands at a place of the page.</summary>
    public Point Off(Point page) => new((page.X - Shift.X) / Scale, (page.Y - Shift.Y) / Scale);

    /// <summary>A box of the frame on the page.</summary>
    public Box On(Box frame)
    {
        Point lower = On(new Point(frame.Left, frame.Lower)), upper = On(new Point(frame.Right, frame.Upper));
        return new(lower.X, lower.Y, upper.X, upper.Y);
    }
}
