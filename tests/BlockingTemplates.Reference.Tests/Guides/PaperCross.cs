using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Guides;

// Two lines of one length that cross in their middles, read off a page.
internal sealed record PaperCross(Point At, double SizeMm);
