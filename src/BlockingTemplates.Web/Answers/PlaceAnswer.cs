namespace BlockingTemplates.Web.Answers;

/// <summary>Where a field belongs, the way in which there is room for it, and how it is dragged (null: not).</summary>
internal sealed record PlaceAnswer(string Path, double X, double Y, double AwayX, double AwayY, HandleAnswer? Handle);
