using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Drawing.Writing;

/// <summary>Size, weight and line pitch of running text.</summary>
/// <param name="SizeMm">Font size (em) in millimetres.</param>
/// <param name="Weight">Weight.</param>
/// <param name="LineMm">Distance from line to line, in millimetres.</param>
public sealed record TextStyle(double SizeMm, FontWeight Weight, double LineMm)
{
    /// <summary>The title of a document.</summary>
    public static TextStyle Title { get; } = new(7.5, FontWeight.Bold, 9.5);

    /// <summary>A heading.</summary>
    public static TextStyle Heading { get; } = new(4.8, FontWeight.Bold, 7);

    /// <summary>Running text, readable at arm's length.</summary>
    public static TextStyle Body { get; } = new(3.7, FontWeight.Regular, 5);

    /// <summary>Running text that must catch the eye.</summary>
    public static TextStyle Strong { get; } = new(3.7, FontWeight.Bold, 5);

    /// <summary>Text beside pictures and in margins.</summary>
    public static TextStyle Small { get; } = new(3.2, FontWeight.Regular, 4.2);
}
