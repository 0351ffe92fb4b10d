using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Texts;

// A text as it comes to stand on its page: the box of its ink, and what of that the clip lets through.
internal sealed record SeenText(string Text, Box Ink, Box Seen)
{
    public bool IsCut => Seen != Ink;

    public bool Overlaps(SeenText other) => Seen.Grown(-0.005).Overlaps(other.Seen);
}
