using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>The lengths that may stand at a place, both ends included.</summary>
internal sealed record LengthRange(Length Least, Length Most);
