using BlockingTemplates.Drawing.Guides;

namespace BlockingTemplates.Web.Answers;

/// <summary>The ways of holding one edge.</summary>
/// <param name="Words">In words.</param>
/// <param name="Hold">The way suggested as the project file writes it.</param>
/// <param name="IsPlanned">Whether the plan holds it so already.</param>
internal sealed record AdviceAnswer(AdviceWords Words, string Hold, bool IsPlanned);
