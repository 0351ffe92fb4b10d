using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Sections;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects;

/// <summary>Finds the line of a path in a project file.</summary>
public sealed class PathLines
{
    private readonly JsonPlace? _root;

    internal PathLines(JsonPlace? root) => _root = root;

    /// <summary>The line of a path, from 1; of the nearest place around it where the file has no such path; null for what is no path of a project file.</summary>
    /// <param name="path">The path, such as <c>piece.unblocked.edges[2].bow</c>; empty for the file as a whole.</param>
    public int? LineOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (_root is null)
            return null;
        var place = _root;
        var rest = path.Length > 0 && path[0] != '[' ? "." + path : path;
        while (rest.Length > 0 && Step(place, rest) is { } next)
        {
            rest = rest[next.Step.Length..];
            place = next;
        }

        return place != _root || rest.Length == 0 || IsRootName(rest) ? place.Line : null;
    }

    /// <summary>The same problems and notes, each with its line where it had none and the file knows one.</summary>
    public Findings WithLines(Findings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var located = new Findings(findings.Units);
        foreach (var p in findings.Problems)
            located.Problem(p.Path, p.What, p.Do, p.Line ?? LineOf(p.Path));
        foreach (var n in findings.Notes)
            located.Note(n.Place, n.What, n.Do, n.Line ?? LineOf(n.Place));
        return located;
    }

    private static bool IsRootName(string rest)
    {
        var name = rest[1..].Split('.', '[')[0];
        return SectionNames.Of<ProjectFile>().Contains(name);
    }

    // Names may hold points and brackets, so the longest name that fits is taken.
    private static JsonPlace? Step(JsonPlace place, string rest)
    {
        if (place.Kind == JsonPlaceKind.List)
        {
            var end = rest.IndexOf(']', StringComparison.Ordinal);
            return end > 1 && int.TryParse(rest[1..end], NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < place.Items.Count
                ? place.Items[index]
                : null;
        }

        return place.Items
            .Where(i => rest.StartsWith(i.Step, StringComparison.Ordinal) && (rest.Length == i.Step.Length || rest[i.Step.Length] is '.' or '['))
            .MaxBy(i => i.Step.Length);
    }
}
