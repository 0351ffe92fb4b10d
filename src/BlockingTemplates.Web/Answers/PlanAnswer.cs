using BlockingTemplates.Drawing.Guides;

namespace BlockingTemplates.Web.Answers;

/// <summary>A plan as the page shows it.</summary>
internal sealed record PlanAnswer(
    string Part,
    string Title,
    string View,
    double Width,
    double Height,
    IReadOnlyList<string> Layers,
    int Mats,
    string MatField,
    int Pins,
    string? LargestPull,
    string? WorstScallop,
    bool HasCloth,
    IReadOnlyList<GuideAnswer> Guides,
    IReadOnlyList<EdgeAnswer> Edges,
    IReadOnlyList<SupplyAnswer> Supplies,
    IReadOnlyList<WireWords> Wires,
    IReadOnlyList<AdviceAnswer> Advice,
    string AdviceFor,
    string? AdviceStar,
    IReadOnlyList<string> Files,
    IReadOnlyList<string> Cautions);
