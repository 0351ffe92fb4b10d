using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Projects;

/// <summary>What came of reading a project file in one of its sizes.</summary>
/// <param name="Name">The size's name; empty where the file lists no sizes.</param>
/// <param name="Project">The project in that size, or null where not even the kind of piece could be read.</param>
/// <param name="Findings">Every problem and note of that size, at paths of the true file.</param>
/// <param name="Own">Where in the true file the values of the size stand, by the paths that later stages know.</param>
public sealed record SizeReading(string Name, Project? Project, Findings Findings, IReadOnlyDictionary<string, string> Own)
{
    /// <summary>The same problems and notes at paths of the true file: those on a value of the size at that value.</summary>
    public Findings AtTruePaths(Findings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var there = new Findings(findings.Units);
        foreach (var p in findings.Problems)
            there.Problem(TruePath(p.Path), p.What, p.Do, p.Line);
        foreach (var n in findings.Notes)
            there.Note(TruePath(n.Place), n.What, n.Do, n.Line);
        return there;
    }

    private string TruePath(string path)
    {
        for (var end = path.Length; end > 0; end = path.LastIndexOfAny(['.', '['], end - 1))
        {
            if (Own.TryGetValue(path[..end], out var there))
                return there + path[end..];
        }

        return path;
    }
}
