using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>A size of paper.</summary>
/// <param name="Name">Its name, such as A4 or Letter.</param>
/// <param name="Short">Its short side.</param>
/// <param name="Long">Its long side, at least the short one.</param>
public sealed record Paper(string Name, Length Short, Length Long);
