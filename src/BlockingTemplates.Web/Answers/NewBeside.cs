namespace BlockingTemplates.Web.Answers;

/// <summary>A file beside the project, from the maker's disk.</summary>
internal sealed record NewBeside(string Name, byte[] Bytes);
