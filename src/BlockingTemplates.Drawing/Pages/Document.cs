namespace BlockingTemplates.Drawing.Pages;

/// <summary>Finished pages in reading order.</summary>
/// <param name="Title">Title of the document, as the maker wrote it; any text.</param>
/// <param name="Pages">The pages; each may have its own size.</param>
public sealed record Document(string Title, IReadOnlyList<Page> Pages);
