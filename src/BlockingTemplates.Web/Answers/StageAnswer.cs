namespace BlockingTemplates.Web.Answers;

/// <summary>What was found of one version of a project.</summary>
/// <param name="Version">The version.</param>
/// <param name="Stage">Which stage of it, from 0.</param>
/// <param name="IsFinal">Whether no later stage has anything to add.</param>
/// <param name="Shape">The kind of piece, or null where it cannot be read.</param>
/// <param name="Unit">The maker's unit.</param>
/// <param name="Problems">What keeps a plan from being made.</param>
/// <param name="Notes">What goes with the plan.</param>
/// <param name="Finished">The finished piece with its fields.</param>
/// <param name="Unblocked">The unblocked piece with its fields.</param>
/// <param name="Plan">The plan, the first of several; or null.</param>
/// <param name="Others">The other plans: of further sizes, of the other piece of a pair.</param>
internal sealed record StageAnswer(
    long Version,
    int Stage,
    bool IsFinal,
    string? Shape,
    UnitAnswer Unit,
    IReadOnlyList<FoundAnswer> Problems,
    IReadOnlyList<FoundAnswer> Notes,
    MeasureAnswer? Finished,
    MeasureAnswer? Unblocked,
    PlanAnswer? Plan,
    IReadOnlyList<PlanAnswer> Others);
