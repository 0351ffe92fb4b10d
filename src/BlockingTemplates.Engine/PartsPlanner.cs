using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine;

/// <summary>Plans all that a project file asks for: every size, and both pieces of a pair.</summary>
public static class PartsPlanner
{
    /// <summary>The plans; none where any of them has a problem.</summary>
    /// <param name="reading">The file as read.</param>
    /// <param name="plan">Plans one project, by the pins of the piece it mirrors if any; null after adding a problem.</param>
    public static PlannedFile Plan(ProjectReading reading, Func<Project, PinPlan?, Findings, Plan?> plan)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(plan);
        List<PlannedPart> parts = [];
        List<(string Name, Findings Found)> found = [];
        IReadOnlyList<SizeReading> sizes = reading.Sizes.Count > 0 ? reading.Sizes : [new("", reading.Project, new(), new Dictionary<string, string>())];
        foreach (var size in sizes)
        {
            Plan? measured = null;
            foreach (var piece in size.Project is { } read ? Pieces(read) : [])
            {
                var project = measured is null ? piece : piece with { Pins = piece.Pins with { Anchor = LeftAndRight.Other(measured.Pins.Anchor.Name) } };
                var findings = new Findings(project.Units);
                findings.AddAll(reading.OfTheList);
                findings.AddAll(size.Findings);
                var planned = plan(project, measured?.Pins, findings);
                var located = reading.Lines.WithLines(size.AtTruePaths(findings));
                found.Add((project.Part, located));
                if (planned is null)
                    break;
                measured = planned;
                parts.Add(new(project.Size, project.PieceName, project.IsMirrored, planned with { Notes = located.Notes }));
                if (planned is { Pins.Mirror: not null, Project: { IsMirrored: true, Pair: { } pair } })
                    located.Note("piece.pair", $"The piece is symmetric: {pair.Measured} and {pair.Mirrored} are alike.", "One guide serves both; print it once.", reading.Lines.LineOf("piece.pair"));
            }

            if (size.Project is null)
                found.Add((size.Name, Together(reading.OfTheList, size.Findings)));
        }

        var all = Told(found);
        return new(all.IsClean ? parts : [], all);
    }

    /// <summary>The pieces of a project: itself, or the measured one of a pair and its mirror image.</summary>
    private static IEnumerable<Project> Pieces(Project project) => project.Pair is not { } pair
        ? [project]
        :
        [
            project with { PieceName = pair.Measured },
            project with { PieceName = pair.Mirrored, IsMirrored = true },
        ];

    private static Findings Together(Findings one, Findings other)
    {
        var both = new Findings(one.Units);
        both.AddAll(one);
        both.AddAll(other);
        return both;
    }

    /// <summary>What holds for all parts once, the rest with its part's name.</summary>
    private static Findings Told(List<(string Name, Findings Found)> found)
    {
        if (found.Count == 1)
            return found[0].Found;
        var told = new Findings(found.Count > 0 ? found[0].Found.Units : LengthUnit.Millimetres);
        bool IsCommon(Func<Findings, bool> has) => found.TrueForAll(f => has(f.Found));
        bool IsPlaced(string path) => path.StartsWith("sizes[", StringComparison.Ordinal);
        string Named(string name, string what) => $"{char.ToUpperInvariant(name[0])}{name[1..]}: {what}";
        HashSet<(string, string, string)> done = [];
        foreach (var (name, findings) in found)
        {
            foreach (var p in findings.Problems)
            {
                var isCommon = IsPlaced(p.Path) || IsCommon(f => f.Problems.Contains(p));
                var what = isCommon ? p.What : Named(name, p.What);
                if (done.Add((p.Path, what, p.Do)))
                    told.Problem(p.Path, what, p.Do, p.Line);
            }
        }

        done.Clear();
        foreach (var (name, findings) in found)
        {
            foreach (var n in findings.Notes)
            {
                var what = IsPlaced(n.Place) || n.Place == "piece.pair" || IsCommon(f => f.Notes.Contains(n)) ? n.What : Named(name, n.What);
                if (done.Add((n.Place, what, n.Do)))
                    told.Note(n.Place, what, n.Do, n.Line);
            }
        }

        return told;
    }
}
