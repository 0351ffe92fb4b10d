using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>A project file in one of its sizes.</summary>
/// <param name="Name">The size's name.</param>
/// <param name="Root">The whole file with what the size has of its own in the place of what is common.</param>
/// <param name="Own">Where in the true file the values of the size stand, by their paths in the whole one.</param>
internal sealed record SizedFile(string Name, JsonPlace Root, IReadOnlyDictionary<string, string> Own);
