using System.Globalization;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Cli;

/// <summary>Tells problems and notes, one a line, and how many there are.</summary>
internal static class Listing
{
    public static void Write(Findings findings, TextWriter output)
    {
        foreach (var problem in findings.Problems)
            output.WriteLine(Line("problem", problem.Line, problem.Path, problem.What, problem.Do));
        foreach (var note in findings.Notes)
            output.WriteLine(Line("note", note.Line, note.Place, note.What, note.Do));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{findings.Problems.Count} problems, {findings.Notes.Count} notes"));
    }

    private static string Line(string kind, int? line, string place, string what, string advice)
    {
        var where = (line, place.Length > 0) switch
        {
            ({ } at, true) => string.Create(CultureInfo.InvariantCulture, $"line {at}, {place}"),
            ({ } at, false) => string.Create(CultureInfo.InvariantCulture, $"line {at}"),
            (null, true) => place,
            _ => "the file",
        };
        return $"{kind}: {where}: {what} {advice}";
    }
}
