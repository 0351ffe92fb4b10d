namespace BlockingTemplates.Engine.Projects;

/// <summary>The names of a mirrored pair.</summary>
/// <param name="Measured">The piece as it was measured.</param>
/// <param name="Mirrored">Its mirror image.</param>
public sealed record PairNames(string Measured, string Mirrored);
