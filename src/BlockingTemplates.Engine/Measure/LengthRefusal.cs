namespace BlockingTemplates.Engine.Measure;

/// <summary>Why a text is no length.</summary>
/// <param name="What">What is wrong, as a sentence.</param>
/// <param name="Write">What to write instead, as a sentence.</param>
internal sealed record LengthRefusal(string What, string Write);
