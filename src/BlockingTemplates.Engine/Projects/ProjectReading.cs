using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Projects;

/// <summary>What came of reading a project file.</summary>
/// <param name="Project">
/// The project as far as it could be read, so that later stages can add their problems to those of reading; no plan may be
/// made of it unless <see cref="Findings"/> is clean. Null where not even the kind of piece could be read.
/// </param>
/// <param name="Findings">Every problem and note, each with its line, in the file's order of sections.</param>
/// <param name="Lines">The lines of the file's paths, for what later stages find.</param>
public sealed record ProjectReading(Project? Project, Findings Findings, PathLines Lines)
{
    /// <summary>
    /// The file in each of its sizes, where it lists several: <see cref="Project"/> is then the first of them, and
    /// <see cref="Findings"/> holds what was found in the list itself and in all sizes. Empty where it lists none.
    /// </summary>
    public IReadOnlyList<SizeReading> Sizes { get; init; } = [];

    /// <summary>What was found in the list of sizes itself; all that was found where the file lists none.</summary>
    public Findings OfTheList { get; init; } = Findings;
}
