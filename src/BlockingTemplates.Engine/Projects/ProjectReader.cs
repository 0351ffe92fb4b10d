using System.Globalization;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Files;
using BlockingTemplates.Engine.Projects.Sections;
using BlockingTemplates.Engine.Projects.Text;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine.Projects;

/// <summary>Reads the text of a project file and finds every problem in it at once.</summary>
/// <param name="kinds">The kinds of piece known.</param>
/// <param name="paper">The paper of a name, or null where it is not known; A4 has to be.</param>
/// <param name="paperNames">The names of the papers known.</param>
/// <param name="beside">The file of a plain name beside the project file; null where the project file stands nowhere.</param>
public sealed class ProjectReader(IReadOnlyList<PieceKind> kinds, Func<string, Paper?> paper, IReadOnlyList<string> paperNames, Func<string, FileBeside>? beside = null)
{
    /// <summary>The most bytes a project file may have: 5 MB, counted as 5,000,000 bytes.</summary>
    public const int MostBytes = 5_000_000;

    /// <summary>The problem of a file with so many bytes, or null; to be asked before the file is read.</summary>
    public static Problem? TooLong(long bytes) => bytes <= MostBytes
        ? null
        : new(
            "",
            string.Create(CultureInfo.InvariantCulture, $"The file has {bytes} bytes, more than the {MostBytes} of 5 MB; it was not read."),
            "Check that this is a project file; give points a few millimetres apart, not less.");

    /// <summary>Reads a project file. Any bytes give a project, problems or both; none throws.</summary>
    /// <param name="utf8">The file: JSON in UTF-8, with or without a byte order mark; comments and trailing commas allowed.</param>
    public ProjectReading Read(ReadOnlySpan<byte> utf8)
    {
        var reading = new FileReading { Beside = beside };
        if (TooLong(utf8.Length) is { } tooLong)
        {
            reading.Problem(tooLong.Path, null, tooLong.What, tooLong.Do);
            return new(null, reading.Findings, new(null));
        }

        var root = JsonText.Read(utf8, reading);
        if (root is not null && SizesReader.Read(root, reading) is { Count: > 0 } sized)
        {
            List<SizeReading> sizes = [.. sized.Select(ReadSize)];
            reading.Close();
            var all = new Findings();
            all.AddAll(reading.Findings);
            sizes.ForEach(s => all.AddAll(s.Findings));
            return new(sizes[0].Project, all, new(root)) { Sizes = sizes, OfTheList = reading.Findings };
        }

        var project = root is null ? null : ReadRoot(root, reading);
        reading.Close();
        return new(project, reading.Findings, new(root));
    }

    private SizeReading ReadSize(SizedFile size)
    {
        var reading = new FileReading { Beside = beside };
        var project = ReadRoot(size.Root, reading);
        reading.Close();
        var read = new SizeReading(size.Name, project is null ? null : project with { Size = size.Name }, reading.Findings, size.Own);
        return read with { Findings = read.AtTruePaths(reading.Findings) };
    }

    private Project? ReadRoot(JsonPlace root, FileReading reading)
    {
        if (reading.NotBlank(root, "Begin with `new`, which writes a project file with blanks.") is null)
            return null;
        NotYetArrived.Note(root, reading);
        var section = Section.Open<ProjectFile>(root, "a project file", reading);
        if (!section.IsThere)
            return null;
        reading.Text(section["$schema"], Limits.LongestNotes);
        reading.Whole(section["format"], Limits.Format, Limits.Format);
        var title = reading.Text(section["title"], Limits.LongestTitle) ?? "";
        var unitsAt = section["units"];
        var units = reading.Word<LengthUnit>(unitsAt);
        reading.Unit = units ?? LengthUnit.Millimetres;
        reading.UnitIsKnown = units is not null || unitsAt is null or { Kind: JsonPlaceKind.Blank };

        var piece = PieceReader.Read(section.Needed("piece", "Write the piece: its shape and its finished size.", reading), kinds, reading);
        var fabric = FabricReader.Fabric(section["fabric"], reading);
        var pins = PinsReader.Read(section["pins"], piece, reading);
        var wires = WiresReader.Wires(section["wires"], reading);
        var combs = WiresReader.Combs(section["combs"], reading);
        var mats = MatsReader.Read(section["mats"], reading);
        var sheets = new SheetsReader(paper, paperNames, reading).Read(section["sheets"]);
        var set = FabricReader.Set(section["set"], reading);
        var notes = reading.Text(section["notes"], Limits.LongestNotes, severalLines: true) ?? "";
        var timeLimit = reading.Number(section["timeLimit"], Limits.LeastSeconds, Limits.MostSeconds);
        return piece is null ? null : new Project
        {
            Title = title,
            Units = reading.Unit,
            Kind = piece.Kind,
            FaceUp = piece.FaceUp,
            MeasuredFaceUp = piece.MeasuredFaceUp,
            EvenOut = piece.EvenOut,
            Pair = piece.Pair,
            Finished = piece.Finished,
            Unblocked = piece.Unblocked,
            Edges = piece.Edges,
            Fabric = fabric,
            Pins = pins with { Wires = wires, Combs = combs },
            Mats = mats,
            Sheets = sheets,
            Set = set,
            Notes = notes,
            TimeLimit = timeLimit is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
        };
    }
}
