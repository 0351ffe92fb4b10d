using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Projects.Files;

// Drawings beside a project, and what is read of them.
internal static class Drawn
{
    public static string Svg(string d, string head = "width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\"", string around = "{0}") =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" {head}>{around.Replace("{0}", $"<path id=\"a\" d=\"{d}\"/>", StringComparison.Ordinal)}</svg>";

    public static string Project(string finished) =>
        $"{{ \"units\": \"mm\", \"piece\": {{ \"shape\": \"outline\", \"finished\": {{ {finished} }} }} }}";

    public static Outline Read(string drawing, string more = "", string name = "a.svg")
    {
        var reading = Reading.With(Project($"\"file\": \"{name}\"{more}"), (name, drawing));
        Assert.Empty(reading.Findings.Problems);
        var project = reading.Project!;
        var outline = project.Kind.Finished(project.Finished, reading.Findings);
        Assert.Empty(reading.Findings.Problems);
        return outline!;
    }

    public static Problem Refused(string drawing, string more = "", string name = "a.svg")
    {
        var problem = Assert.Single(Reading.With(Project($"\"file\": \"{name}\"{more}"), (name, drawing)).Findings.Problems);
        Reading.AssertSaysAll(problem);
        return problem;
    }

    public static void Near(double expected, double found, double within = 1e-6) => Assert.InRange(found - expected, -within, within);
}
