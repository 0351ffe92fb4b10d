namespace BlockingTemplates.Engine.Measure;

/// <summary>Something in the maker's file that keeps a plan from being made.</summary>
/// <param name="Path">Place in the file, such as <c>piece.unblocked.edges[2].bow</c>; empty for the file as a whole.</param>
/// <param name="What">What is wrong, in the maker's words.</param>
/// <param name="Do">What to do about it.</param>
/// <param name="Line">Line in the file, from 1; null where the stage that found it knows the path only.</param>
public sealed record Problem(string Path, string What, string Do, int? Line = null);
