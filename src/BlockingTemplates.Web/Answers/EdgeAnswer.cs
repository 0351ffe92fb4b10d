namespace BlockingTemplates.Web.Answers;

/// <summary>What is planned for an edge, in the maker's words.</summary>
internal sealed record EdgeAnswer(string Name, string Finished, string Pinned, string? Unblocked, string? Stretch, int Pins, string Spacing);
