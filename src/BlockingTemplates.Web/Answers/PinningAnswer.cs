using BlockingTemplates.Web.Desk;

namespace BlockingTemplates.Web.Answers;

/// <summary>The pinning of a piece: how far it has come and the plan it goes by with its marks.</summary>
internal sealed record PinningAnswer(PinsSoFar? Pins, bool ChangedSince, PlanAnswer? Plan, IReadOnlyList<PinAnswer>? Marks);
