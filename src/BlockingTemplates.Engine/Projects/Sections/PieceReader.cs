using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads <c>piece</c>.</summary>
internal static class PieceReader
{
    /// <summary>What <c>piece</c> says, or null where not even the kind of piece can be read.</summary>
    public static PieceAsRead? Read(JsonPlace? place, IReadOnlyList<PieceKind> kinds, FileReading reading)
    {
        var section = Section.Open<PieceSection>(place, "the piece", reading);
        var shapes = kinds.Select(k => k.Shape).ToList();
        var kind = Kind(section.Needed("shape", $"Write one of {Values.Listed(shapes)}.", reading), kinds, shapes, reading);
        var finishedAt = section.Needed("finished", "Write the finished size.", reading);
        var faceUp = reading.Word<WorkSide>(section["faceUp"]) ?? WorkSide.RightSide;
        var measuredFaceUp = reading.Word<WorkSide>(section["measuredFaceUp"]) ?? faceUp;
        var evenOut = reading.YesNo(section["evenOut"]) ?? false;
        var pair = Pair(section["pair"], reading);
        if (kind is null)
        {
            EdgesReader.Read(section["edges"], null, reading);
            return null;
        }

        Measurements finished;
        Measurements? unblocked;
        IReadOnlyList<string>? corners = kind.CornerNames;
        IReadOnlyList<string>? edges = kind.EdgeNames;
        if (kind.GivenByCorners)
        {
            finished = OutlineReader.Read(finishedAt, "piece.finished", reading, out corners, out edges);
            unblocked = section["unblocked"] is { Kind: not JsonPlaceKind.Blank } at ? OutlineReader.Read(at, "piece.unblocked", reading, out _, out _) : null;
        }
        else
        {
            finished = MeasurementsReader.Finished(finishedAt, kind, reading);
            unblocked = MeasurementsReader.Unblocked(section["unblocked"], kind, reading);
        }

        return new(kind, faceUp, measuredFaceUp, evenOut, pair, finished, unblocked, EdgesReader.Read(section["edges"], edges, reading), corners, edges);
    }

    private static PairNames? Pair(JsonPlace? place, FileReading reading)
    {
        const string Write = "Write [\"right front\", \"left front\"]: first the one that was measured.";
        if (place is null || !reading.IsList(place, 2, "the names of two pieces in a list", Write))
            return null;
        if (place.Items.Count < 2)
        {
            reading.Problem(place, "A pair has two pieces, and here stand fewer names.", Write);
            return null;
        }

        var names = place.Items.Select(i => reading.NotBlank(i, Write) is null ? null : reading.Text(i, Limits.LongestName)).ToList();
        if (names is not [{ } first, { } second])
            return null;
        if (first.Length > 0 && second.Length > 0 && !first.Equals(second, StringComparison.OrdinalIgnoreCase))
            return new(first, second);
        reading.Problem(place, "The two pieces of a pair need two different names.", Write);
        return null;
    }

    private static PieceKind? Kind(JsonPlace? place, IReadOnlyList<PieceKind> kinds, IReadOnlyList<string> shapes, FileReading reading)
    {
        if (place is null || reading.Text(place, Limits.LongestName) is not { } shape)
            return null;
        if (kinds.FirstOrDefault(k => k.Shape == shape) is { } kind)
            return kind;
        reading.Problem(
            place,
            $"{place.Words} is no kind of piece known here.",
            NearestName.Of(shape, shapes) is { } near
                ? $"Did you mean \"{near}\"?"
                : $"Write one of {Values.Listed(shapes)}; \"outline\" takes any shape.");
        return null;
    }
}
