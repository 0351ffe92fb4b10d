namespace BlockingTemplates.Web.Answers;

/// <summary>The maker's unit: its name, its millimetres, and the least step a tape is read in.</summary>
internal sealed record UnitAnswer(string Name, double Mm, double Step);
