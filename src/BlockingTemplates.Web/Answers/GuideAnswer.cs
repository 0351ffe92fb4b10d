namespace BlockingTemplates.Web.Answers;

/// <summary>A guide's sheets.</summary>
internal sealed record GuideAnswer(string Paper, int Sheets, int Joining, bool Landscape, double ShortBarMm, double LongBarMm);
