namespace BlockingTemplates.Web.Answers;

/// <summary>A step of the pinning; see the steps of <see cref="Desk.PinsSoFar.After"/>, and begin.</summary>
internal sealed record PinStep(string Step, int Number);
