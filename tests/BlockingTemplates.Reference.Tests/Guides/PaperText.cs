using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Reference.Tests.Guides;

// Letters of one run, read off a page: what they say, the box round their glyphs and their baseline.
internal sealed record PaperText(string Says, Box Box, double BaselineMm, double SizeMm, bool IsBold, bool IsLevel);
