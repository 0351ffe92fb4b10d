namespace BlockingTemplates.Web.Answers;

/// <summary>A pull: how far, in words; which way, in words and in degrees counter-clockwise from the right (null: it lies there already); whether it is only about so.</summary>
internal sealed record PullAnswer(string Length, string? Direction, double? Angle, bool IsApproximate);
