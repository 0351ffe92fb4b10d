namespace BlockingTemplates.Engine.Measure;

/// <summary>Something the maker should know that goes with a plan.</summary>
/// <param name="Place">Where it applies: a path in the file, an edge, a mark or a mat.</param>
/// <param name="What">What was found, with figures.</param>
/// <param name="Do">What to do about it.</param>
/// <param name="Line">Line in the file, from 1; null where it stands in no line.</param>
public sealed record Note(string Place, string What, string Do, int? Line = null);
