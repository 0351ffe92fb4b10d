using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Puts points and scallops on the edges that have them, finished and unblocked.</summary>
internal static class PointedOutlines
{
    /// <summary>Both outlines with their points; the finished one is null after adding a problem.</summary>
    /// <param name="finished">The finished outline, smooth.</param>
    /// <param name="unblocked">The unblocked one with the same edges, smooth, or null.</param>
    /// <param name="edges">What was said of each edge.</param>
    /// <param name="stations">Where the stitches of each edge lie on the smooth lines.</param>
    /// <param name="findings">Takes problems and notes.</param>
    public static (Outline? Finished, Outline? Unblocked) Of(
        Outline finished, Outline? unblocked, IReadOnlyList<EdgeTreatment> edges, IReadOnlyList<Correspondence> stations, Findings findings)
    {
        if (edges.All(e => e.Points is null))
            return (finished, unblocked);
        var problems = findings.Problems.Count;
        List<Edge> now = [], before = [];
        for (var i = 0; i < edges.Count; i++)
        {
            var (edge, match, points) = (finished.Edges[i], stations[i], edges[i].Points);
            var lies = unblocked?.Edges[i];
            if (points is not null)
            {
                double[] shares = [.. Enumerable.Range(0, points.Count + 1).Select(k => (double)k / points.Count)];
                double[] valleys = [.. shares.Select(match.PinnedAt)];
                Note(edge, points, edges[i].Count, findings);
                var depth = points.UnblockedDepth?.Millimetres ?? (lies is null ? 0 : points.Depth.Millimetres * lies.Curve.Length / edge.Curve.Length);
                if (lies is not null && points.UnblockedDepth is null)
                    findings.Note($"piece.edges.{edge.Name}.points", $"How deep the {points.Word}s of the {edge.Name} edge are unblocked was not measured: {findings.Say(depth)} is taken, in the measure of the edge's length.", "Measure it from the line through the valleys and write \"unblockedDepth\".");
                lies = lies is null ? null : With(lies, [.. valleys.Select(match.UnblockedAt)], points, depth, points.UnblockedDepth is null ? "depth" : "unblockedDepth", "unblocked", findings);
                edge = With(edge, valleys, points, points.Depth.Millimetres, "depth", "finished", findings);
            }

            now.Add(edge);
            if (lies is not null)
                before.Add(lies);
        }

        if (findings.Problems.Count > problems)
            return (null, null);
        return (Whole(new(now, finished.Corners), "finished", edges, findings), unblocked is null ? null : Whole(new(before, unblocked.Corners), "unblocked", edges, findings));
    }

    private static Edge With(Edge edge, double[] valleys, EdgePoints points, double depth, string name, string state, Findings findings)
    {
        if (points.Shape == PointShape.Scallop && PointedEdge.DeepestScallop(edge.Curve, valleys) is var deepest && depth > deepest)
        {
            findings.Problem(
                $"piece.edges.{edge.Name}.points.{name}",
                $"Scallops {findings.Say(depth)} deep are more than half circles on the {state} {edge.Name} edge, where {points.Count} of them have {findings.Say(edge.Curve.Length)}.",
                deepest > 0 ? $"Give a depth of at most {findings.Say(deepest)} there, fewer scallops, or \"shape\": \"point\"." : "Give more scallops, or \"shape\": \"point\".");
            return edge;
        }

        return edge with { Curve = PointedEdge.On(edge.Curve, valleys, points.Shape, depth) };
    }

    private static void Note(Edge edge, EdgePoints points, int? count, Findings findings)
    {
        if (count is { } stitches && stitches % points.Count != 0)
            findings.Note($"piece.edges.{edge.Name}.count", FormattableString.Invariant($"The {stitches} counted along the {edge.Name} edge do not divide evenly over its {points.Words}; the tips are taken as even, and the counts at them are rounded."), "Count one repeat, and count the repeats.");
    }

    private static Outline? Whole(Outline outline, string state, IReadOnlyList<EdgeTreatment> edges, Findings findings)
    {
        if (OutlineCrossing.Find(outline) is not var (at, crossed))
            return outline;
        var at0 = crossed.Where(e => edges[e].Points is not null).Append(edges.ToList().FindIndex(e => e.Points is not null)).First();
        var name = outline.Edges[at0].Name;
        findings.Problem(
            $"piece.edges.{name}.points",
            $"With its {edges[at0].Points!.Word}s the {state} outline crosses or touches itself near x {findings.Say(at.X)}, y {findings.Say(at.Y)}, at edge {string.Join(" and ", crossed.Select(e => $"\"{outline.Edges[e].Name}\""))}.",
            "Give a smaller depth: points may meet their neighbours and the other edges only at valleys and corners.");
        return null;
    }
}
