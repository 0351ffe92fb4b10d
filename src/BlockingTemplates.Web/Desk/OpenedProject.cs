using BlockingTemplates.Engine.Projects.Files;
using BlockingTemplates.Output.Packets;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Desk;

/// <summary>Opens a project file on the desk: the working copy it had goes on, unless the file was changed since.</summary>
/// <param name="desk">The desk.</param>
internal sealed class OpenedProject(WorkDesk desk)
{
    /// <summary>The working copy of a file, or null where there are too many.</summary>
    public WorkingCopy? Open(OpenedFile file)
    {
        var hash = KeptFiles.HashOf(file.Bytes);
        var before = desk.All.FirstOrDefault(c => c.Card.FilePath == file.Path);
        if (before is not null)
        {
            var (text, version) = before.Text;
            if (before.Card.SavedHash == hash)
                return before;
            if (KeptFiles.HashOf(text) == before.Card.SavedHash && before.Edit(version, file.Bytes, desk.NextOrder()) is not null)
            {
                before.Saved(file.Path, file.Bytes);
                return before;
            }
        }

        return desk.Add(SafeFileName.From(Path.GetFileNameWithoutExtension(file.Path)), file.Bytes, Beside(file), file.Path);
    }

    /// <summary>The files beside the project that its text asks for.</summary>
    private static List<KeyValuePair<string, byte[]>> Beside(OpenedFile file)
    {
        var found = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        if (file.Beside is { } beside)
        {
            EngineStages.Geometry(new(0, file.Bytes, Kept), null, _ => { }, CancellationToken.None);

            FileBeside Kept(string name)
            {
                var read = beside(name);
                if (read.Bytes is { } bytes)
                    found[name] = bytes;
                return read;
            }
        }

        return [.. found];
    }
}
