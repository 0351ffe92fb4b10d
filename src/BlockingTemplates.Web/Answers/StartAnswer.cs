namespace BlockingTemplates.Web.Answers;

/// <summary>What the page needs to begin.</summary>
internal sealed record StartAnswer(
    IReadOnlyList<KindAnswer> Kinds,
    IReadOnlyList<string> Papers,
    IReadOnlyList<string> Fibres,
    IReadOnlyList<ExampleAnswer> Examples,
    IReadOnlyList<UnitAnswer> Units,
    bool IsShared,
    bool IsLocal);
