using System.Globalization;
using BlockingTemplates.Drawing.Comparing;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Csv;
using BlockingTemplates.Output.Pdf;

namespace BlockingTemplates.Output.Packets;

/// <summary>All files of a project with several plans, ready to be written into one folder.</summary>
/// <remarks>
/// Each size has a folder of its own. The files of the mirrored piece of a pair lie beside those of the measured one, with
/// its name behind theirs: guide-A4.pdf and guide-A4-left-front.pdf. Sizes are compared in sizes.csv and sizes.pdf.
/// </remarks>
public static class PartFiles
{
    private const int MostOfAName = 30;
    private const string Csv = "sizes.csv";
    private const string Pdf = "sizes.pdf";

    /// <summary>The files of all parts; those of one part alone are named as ever.</summary>
    /// <param name="parts">The parts, at least one.</param>
    /// <param name="pictureOnly">Whether only the overviews are wanted.</param>
    /// <param name="cancellation">Stops between files.</param>
    public static IReadOnlyList<PacketFile> Of(IReadOnlyList<PlannedPart> parts, bool pictureOnly = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return [.. Writers(parts).Where(f => !pictureOnly || f.IsPicture).AsParallel().AsOrdered().WithCancellation(cancellation).Select(f => new PacketFile(f.Name, f.Write()))];
    }

    /// <summary>The names of the files of all parts, in their order.</summary>
    public static IReadOnlyList<string> Names(IReadOnlyList<PlannedPart> parts) => [.. Writers(parts).Select(f => f.Name)];

    /// <summary>One file of them, or null where there is none of that name.</summary>
    public static PacketFile? One(IReadOnlyList<PlannedPart> parts, string name) =>
        Writers(parts).Where(f => f.Name == name).Select(f => new PacketFile(f.Name, f.Write())).FirstOrDefault();

    private static List<(string Name, bool IsPicture, Func<byte[]> Write)> Writers(IReadOnlyList<PlannedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var folders = Folders(parts.Select(p => p.Size).Where(s => s.Length > 0).Distinct());
        var files = parts.SelectMany(p => PacketFiles.Writers(p.Plan).Select(f => (Name(p, f.Name, folders), f.IsPicture, f.Write)));
        return folders.Count == 0 ? [.. files] : [(Csv, false, () => SizesCsv.Write(parts)), (Pdf, false, () => PdfWriter.Write(SizesDocument.Draw(parts))), .. files];
    }

    private static string Name(PlannedPart part, string name, Dictionary<string, string> folders)
    {
        var own = part.IsMirrored ? $"{Path.GetFileNameWithoutExtension(name)}-{Short(part.Piece)}{Path.GetExtension(name)}" : name;
        return part.Size.Length > 0 ? $"{folders[part.Size]}/{own}" : own;
    }

    /// <summary>A folder's name for each size; sizes whose names come out alike are numbered.</summary>
    private static Dictionary<string, string> Folders(IEnumerable<string> sizes)
    {
        HashSet<string> taken = new([Csv, Pdf, PacketList.FileName], StringComparer.OrdinalIgnoreCase);
        Dictionary<string, string> folders = [];
        foreach (var size in sizes)
        {
            var name = Short(size);
            for (var number = 2; !taken.Add(name); number++)
                name = string.Create(CultureInfo.InvariantCulture, $"{Short(size)}-{number}");
            folders.Add(size, name);
        }

        return folders;
    }

    private static string Short(string name) => SafeFileName.From(name.Length > MostOfAName ? name[..MostOfAName] : name);
}
