namespace BlockingTemplates.Engine.Measure;

/// <summary>Problems and notes gathered while a project is read and planned, in the order found.</summary>
public sealed class Findings(LengthUnit units = LengthUnit.Millimetres)
{
    private readonly List<Problem> _problems = [];
    private readonly List<Note> _notes = [];

    /// <summary>What keeps a plan from being made.</summary>
    public IReadOnlyList<Problem> Problems => _problems;

    /// <summary>What goes with the plan.</summary>
    public IReadOnlyList<Note> Notes => _notes;

    /// <summary>Whether a plan can be made.</summary>
    public bool IsClean => _problems.Count == 0;

    /// <summary>The units the maker reads.</summary>
    public LengthUnit Units => units;

    /// <summary>A length in the maker's words and units.</summary>
    public string Say(double millimetres) => LengthWords.Of(Length.FromMillimetres(millimetres), units);

    /// <summary>Adds a problem, with its line in the file where that is known.</summary>
    public void Problem(string path, string what, string @do, int? line = null) => _problems.Add(new(path, what, @do, line));

    /// <summary>Adds a note, with its line in the file where that is known.</summary>
    public void Note(string place, string what, string @do, int? line = null) => _notes.Add(new(place, what, @do, line));

    /// <summary>Adds all of another's.</summary>
    public void AddAll(Findings other)
    {
        _problems.AddRange(other._problems);
        _notes.AddRange(other._notes);
    }

    /// <summary>Whether a problem stands at a path already.</summary>
    public bool HasProblemAt(string path) => _problems.Exists(p => p.Path == path);
}
