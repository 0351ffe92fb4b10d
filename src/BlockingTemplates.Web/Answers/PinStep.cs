namespace BlockingTemplates.Web.Answers;

/// <summary>A step of the pinning; see the steps of <see cref="Desk.PinsSoFar.After"/>, and begin, whose number names the plan, from 0.</summary>
internal sealed record PinStep(string Step, int Number);
