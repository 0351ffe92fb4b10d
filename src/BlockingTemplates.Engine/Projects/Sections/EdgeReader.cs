using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Reads one entry of <c>piece.edges</c>.</summary>
internal static class EdgeReader
{
    /// <summary>What is said of an edge.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="section">The entry.</param>
    /// <param name="reading">Takes problems.</param>
    public static EdgeTreatment Read(string name, Section section, FileReading reading)
    {
        var (countAt, everyAt) = (section["count"], section["every"]);
        var count = reading.Whole(countAt, 1, Limits.MostCounted);
        var every = reading.Whole(everyAt, 1, Limits.MostCounted);
        var hold = reading.Word<Holding>(section["hold"]) ?? EdgeTreatment.Unsaid.Hold;
        var of = reading.Word<CountedIn>(section["of"]) ?? EdgeTreatment.Unsaid.Of;
        var isUncounted = countAt is null or { Kind: JsonPlaceKind.Blank };
        var points = Points(name, section["points"], hold, reading);
        if (every is not null)
            every = Every(name, everyAt!, every.Value, count, isUncounted, of, hold, points, reading);
        var stations = Stations(name, section["stations"], count, isUncounted, of, reading);
        return new(count, of, hold) { Every = every, Points = points, Stations = stations.Count == 0 ? EdgeTreatment.Unsaid.Stations : stations };
    }

    private static int? Every(string name, JsonPlace at, int every, int? count, bool isUncounted, CountedIn of, Holding hold, EdgePoints? points, FileReading reading)
    {
        var what = of == CountedIn.Rows ? "rows" : "stitches";
        if (isUncounted)
            reading.Problem(at, $"A mark at every so many {what} is asked for, but the {name} edge is not counted.", $"Add \"count\": how many {what} it has.");
        else if (every > count)
            reading.Problem(at, FormattableString.Invariant($"The {name} edge has {count} {what}, fewer than the {every} between two marks."), "Give a smaller number, or take it out.");
        else if (points is not null)
            reading.Problem(at, $"The {name} edge has {points.Word}s, which have their marks at the tips.", "Take \"every\" or \"points\" out.");
        else if (hold == Holding.None)
            reading.Problem(at, $"Marks are asked for on the {name} edge, which nothing shall hold.", "Take \"every\" out, or write \"hold\": \"pins\".");
        else
            return every;
        return null;
    }

    private static EdgePoints? Points(string name, JsonPlace? at, Holding hold, FileReading reading)
    {
        if (at is null or { Kind: JsonPlaceKind.Blank })
            return null;
        var section = Section.Open<PointsSection>(at, "the points of an edge", reading);
        var countAt = section.Needed("count", "Write how many the edge has.", reading);
        var depthAt = section.Needed("depth", "Write how far the tips stand out of the line through the valleys.", reading);
        var count = reading.Whole(countAt, 1, Limits.MostEdges);
        var depth = reading.Length(depthAt, Limits.PointDepth);
        var before = reading.Length(section["unblockedDepth"], Limits.PointDepth);
        var shape = reading.Word<PointShape>(section["shape"]) ?? PointShape.Point;
        var valleys = reading.Word<Valleys>(section["valleys"]) ?? Valleys.Free;
        if (section.IsThere && hold == Holding.None)
            reading.Problem(at, $"The {name} edge has points, but nothing shall hold it.", "Write \"hold\": \"pins\", or take \"points\" out.");
        return count is { } many && depth is { } deep ? new(many, deep, before, shape, valleys) : null;
    }

    private static List<StitchStation> Stations(string name, JsonPlace? at, int? count, bool isUncounted, CountedIn of, FileReading reading)
    {
        List<StitchStation> stations = [];
        if (at is null || !reading.IsList(at, Limits.MostStations, "a list of known stitches", "Write [ { \"stitch\": 40, \"at\": 22.5 } ]."))
            return stations;
        var (one, several) = of == CountedIn.Rows ? ("Row", "rows") : ("Stitch", "stitches");
        if (isUncounted && at.Items.Count > 0)
            reading.Problem(at, $"Stitches of the {name} edge are known, but not how many it has.", $"Add \"count\": how many {several} it has.");
        foreach (var item in at.Items)
        {
            var section = Section.Open<StationSection>(item, "a known stitch", reading);
            var stitchAt = section.Needed("stitch", "Write which one it is, counted from the edge's first corner.", reading);
            var (placeAt, finishedAt) = (section["at"], section["finished"]);
            var stitch = reading.Whole(stitchAt, 1, Limits.MostCounted);
            var place = reading.Length(placeAt, Limits.Station);
            var finished = reading.Length(finishedAt, Limits.Station);
            if (stitch is not { } number)
                continue;
            if (placeAt is null or { Kind: JsonPlaceKind.Blank } && finishedAt is null or { Kind: JsonPlaceKind.Blank })
            {
                reading.Problem(item, FormattableString.Invariant($"Where {one.ToLowerInvariant()} {number} of the {name} edge lies is not said."), "Write \"at\" (along the unblocked edge), \"finished\" (along the finished one), or both.");
                continue;
            }

            if (number >= count)
                reading.Problem(stitchAt!, FormattableString.Invariant($"{one} {number} is not inside the {name} edge, which has {count} {several}."), "Its corners need no station; give those between them.");
            else if (stations.Count > 0 && number <= stations[^1].Stitch)
                reading.Problem(stitchAt!, FormattableString.Invariant($"{one} {number} comes after {one.ToLowerInvariant()} {stations[^1].Stitch} in the list."), "List them in order along the edge, each once.");
            else if (IsOrdered(stations, s => s.At?.Millimetres, place?.Millimetres, placeAt) && IsOrdered(stations, s => s.Finished?.Millimetres, finished?.Millimetres, finishedAt))
                stations.Add(new(number, place, finished));
        }

        return stations;

        bool IsOrdered(List<StitchStation> before, Func<StitchStation, double?> of, double? here, JsonPlace? placeAt)
        {
            if (here is not { } place || place > (before.LastOrDefault(s => of(s) is not null) is { } last ? of(last)!.Value : 0))
                return true;
            reading.Problem(placeAt!, $"This lies no further along the {name} edge than the stitch before it.", "Measure each from the edge's first corner, along the edge.");
            return false;
        }
    }
}
