using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>sizes</c>: what each size of a piece has of its own.</summary>
internal static class SizesReader
{
    private static readonly string[] OfThePiece = ["finished", "unblocked", "edges"];

    /// <summary>The sizes of a file, each as the whole file in that size; none where it lists none or a list that cannot be read.</summary>
    /// <param name="root">The file.</param>
    /// <param name="reading">Takes problems with names and with the list; what each size measures is read with its file.</param>
    public static IReadOnlyList<SizedFile> Read(JsonPlace root, FileReading reading)
    {
        if (root.Member("sizes") is not { } place || !reading.IsList(place, Limits.MostSizes, "a list of sizes", "Write [ { \"name\": \"M\", \"finished\": { ... } } ]."))
            return [];
        List<SizedFile> sizes = [];
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (var item in place.Items)
        {
            var section = Section.Open<SizeSection>(item, "a size", reading);
            var nameAt = section.Needed("name", "Write what the size is called.", reading);
            if (reading.Text(nameAt, Limits.LongestName) is not { } name)
                continue;
            if (name.Length == 0)
                reading.Problem(nameAt!, "This name is empty.", "Write what the size is called.");
            else if (!taken.Add(name))
                reading.Problem(nameAt!, $"Two sizes are called {nameAt!.Words}.", "Give each its own name.");
            else
                sizes.Add(Sized(root, item, name));
        }

        return sizes;
    }

    private static SizedFile Sized(JsonPlace root, JsonPlace size, string name)
    {
        var whole = new JsonPlace(null, null, 0, root.Line, root.Kind);
        Dictionary<string, string> own = [];
        foreach (var member in root.Items.Where(m => m.Name != "sizes"))
        {
            if (member is not { Name: "piece", Kind: JsonPlaceKind.Object })
            {
                Copy(member, whole, own, false);
                continue;
            }

            var piece = new JsonPlace(whole, "piece", 0, member.Line, member.Kind);
            whole.TryAdd(piece);
            foreach (var part in member.Items)
                Merge(part, OfThePiece.Contains(part.Name) ? size.Member(part.Name!) : null, piece, own);
            foreach (var part in OfThePiece.Where(p => member.Member(p) is null).Select(size.Member).OfType<JsonPlace>())
                Copy(part, piece, own, true);
        }

        return new(name, whole, own);
    }

    /// <summary>Puts a value into its place, with what a size has instead: objects name by name, all else whole.</summary>
    private static void Merge(JsonPlace common, JsonPlace? instead, JsonPlace parent, Dictionary<string, string> own)
    {
        if (instead is null or { Kind: JsonPlaceKind.Blank })
        {
            Copy(common, parent, own, false);
            return;
        }

        if (common.Kind != JsonPlaceKind.Object || instead.Kind != JsonPlaceKind.Object)
        {
            Copy(instead, parent, own, true);
            return;
        }

        var merged = new JsonPlace(parent, common.Name, 0, common.Line, common.Kind);
        parent.TryAdd(merged);
        foreach (var item in common.Items)
            Merge(item, instead.Member(item.Name!), merged, own);
        foreach (var item in instead.Items.Where(i => common.Member(i.Name!) is null))
            Copy(item, merged, own, true);
    }

    private static void Copy(JsonPlace place, JsonPlace parent, Dictionary<string, string> own, bool isOwn)
    {
        var copy = new JsonPlace(parent, place.Name, parent.Items.Count, place.Line, place.Kind)
        {
            Text = place.Text,
            Number = place.Number,
            IsYes = place.IsYes,
            IsCutShort = place.IsCutShort,
        };
        parent.TryAdd(copy);
        if (isOwn)
            own[copy.Path] = place.Path;
        foreach (var item in place.Items)
            Copy(item, copy, own, false);
    }
}
