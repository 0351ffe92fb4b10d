using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Projects.Files;

namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>One reading of one file: what was found so far, and the file's unit.</summary>
internal sealed class FileReading
{
    /// <summary>The most problems listed, so that a file that is no project at all does not fill the screen.</summary>
    public const int MostProblems = 1000;

    private int _unlisted;

    public Findings Findings { get; } = new();

    /// <summary>The file of a plain name beside the project file, or null where there is none to ask for.</summary>
    public Func<string, FileBeside>? Beside { get; init; }

    /// <summary>The unit of numbers and of texts without one.</summary>
    public LengthUnit Unit { get; set; } = LengthUnit.Millimetres;

    /// <summary>Whether the file says its unit so that it can be read; where not, no bare number is too great or too small.</summary>
    public bool UnitIsKnown { get; set; } = true;

    public bool IsFull => Findings.Problems.Count >= MostProblems;

    public void Problem(JsonPlace place, string what, string @do) => Problem(IsFull ? "" : place.Path, place.Line, what, @do);

    public void Problem(string path, int? line, string what, string @do)
    {
        if (IsFull)
            _unlisted++;
        else
            Findings.Problem(path, what, @do, line);
    }

    public void Note(JsonPlace place, string what, string @do)
    {
        if (Findings.Notes.Count < MostProblems)
            Findings.Note(place.Path, what, @do, place.Line);
    }

    public void Note(string place, int? line, string what, string @do)
    {
        if (Findings.Notes.Count < MostProblems)
            Findings.Note(place, what, @do, line);
    }

    /// <summary>Says how many problems were left off the list.</summary>
    public void Close()
    {
        if (_unlisted > 0)
        {
            Findings.Problem(
                "",
                string.Create(CultureInfo.InvariantCulture, $"There are {_unlisted} more problems, not listed."),
                "Mend those above first, and check that this is a project file.");
        }
    }
}
