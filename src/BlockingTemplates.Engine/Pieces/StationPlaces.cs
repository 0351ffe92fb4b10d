using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Makes of the stitches that the maker measured which point of an edge belongs where.</summary>
public static class StationPlaces
{
    /// <summary>The correspondence of every edge; even where a problem was added.</summary>
    /// <param name="finished">The finished outline, without points.</param>
    /// <param name="unblocked">The unblocked outline with the same edges, without points, or null.</param>
    /// <param name="edges">What was said of each edge.</param>
    /// <param name="findings">Takes problems and notes.</param>
    public static IReadOnlyList<Correspondence> Of(Outline finished, Outline? unblocked, IReadOnlyList<EdgeTreatment> edges, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(finished);
        ArgumentNullException.ThrowIfNull(edges);
        ArgumentNullException.ThrowIfNull(findings);
        return [.. edges.Select((e, i) => e.Stations.Count == 0 || e.Count is not { } count
            ? Correspondence.Even
            : Of(finished.Edges[i], unblocked?.Edges[i].Curve.Length, e, count, findings))];
    }

    private static Correspondence Of(Edge edge, double? unblockedMm, EdgeTreatment said, int count, Findings findings)
    {
        var path = $"piece.edges.{edge.Name}.stations";
        var finishedMm = edge.Curve.Length;
        var isWhole = true;
        for (var i = 0; i < said.Stations.Count; i++)
        {
            var station = said.Stations[i];
            if (station.At is { } at && unblockedMm is { } most && at.Millimetres >= most)
                Beyond($"{path}[{i}].at", station, at, "unblocked", most);
            if (station.Finished is { } place && place.Millimetres >= finishedMm)
                Beyond($"{path}[{i}].finished", station, place, "finished", finishedMm);
        }

        if (unblockedMm is null && said.Stations.Any(s => s.At is not null))
            findings.Note(path, $"The {edge.Name} edge has stitches measured on the unblocked piece, which itself was not measured: they are left out.", "Add \"unblocked\", or take the stations out.");
        if (!isWhole)
            return Correspondence.Even;
        var measured = Places(said, count, s => s.At?.Millimetres / unblockedMm);
        var wanted = Places(said, count, s => s.Finished?.Millimetres / finishedMm);
        double[] shares = [.. measured.Concat(wanted).Select(p => p.Share).Distinct().Order()];
        return new([.. shares.Select(s => (s, On(wanted, s), On(measured, s)))]);

        void Beyond(string where, StitchStation station, Length at, string state, double most)
        {
            isWhole = false;
            var what = said.Of == CountedIn.Rows ? "Row" : "Stitch";
            findings.Problem(where, FormattableString.Invariant($"{what} {station.Stitch} of the {edge.Name} edge stands at {findings.Say(at.Millimetres)}, but the {state} edge is {findings.Say(most)} long."), "Measure from the edge's first corner, along the edge.");
        }
    }

    private static List<(double Share, double Place)> Places(EdgeTreatment said, int count, Func<StitchStation, double?> place) =>
        [(0, 0), .. said.Stations.Where(s => place(s) is not null).Select(s => ((double)s.Stitch / count, place(s)!.Value)), (1, 1)];

    private static double On(List<(double Share, double Place)> places, double share)
    {
        var i = places.FindIndex(p => p.Share >= share);
        if (places[i].Share == share)
            return places[i].Place;
        var (before, after) = (places[i - 1], places[i]);
        return before.Place + ((after.Place - before.Place) * (share - before.Share) / (after.Share - before.Share));
    }
}
