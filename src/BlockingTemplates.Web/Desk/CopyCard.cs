namespace BlockingTemplates.Web.Desk;

/// <summary>What is kept of a working copy beside its text.</summary>
/// <param name="Name">Its file name without the ending.</param>
/// <param name="Version">Its version.</param>
/// <param name="Order">Counts changes of all copies: the greatest was touched last.</param>
/// <param name="FilePath">The project file it saves to, or null.</param>
/// <param name="SavedHash">SHA-256 of that file as last read or written.</param>
/// <param name="Beside">Names of the files that stand beside it, in the order of their numbered files.</param>
internal sealed record CopyCard(string Name, long Version, long Order, string? FilePath, string? SavedHash, IReadOnlyList<string> Beside);
