using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Makes a piece of what the maker said of it.</summary>
public static class PieceMaker
{
    private const double SmallestAreaMm2 = 100;

    /// <summary>The piece, or null after adding every problem found.</summary>
    public static Piece? Make(PieceRequest request, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(findings);
        var turned = request.FaceUp != request.MeasuredFaceUp;
        var finished = Whole(request.Kind.Finished(request.Finished, findings), request.Finished.Path, findings);
        Outline? unblocked = null;
        if (request.Unblocked is { } measured)
        {
            // Judged as it was measured, so that problems name the edges of the file; turned over only then.
            unblocked = Whole(request.Kind.Unblocked(Prepared(request, measured, findings), findings), measured.Path, findings);
            if (unblocked is not null && turned)
                findings.Note(measured.Path, "The piece was measured with the other side up than it will be pinned with: left and right were exchanged.", "Lay it with the side up that \"faceUp\" names before you pin.");
            if (unblocked is not null && finished is not null)
                unblocked = Matched(turned ? TurnedOver(unblocked, request.Kind) : unblocked, finished, measured.Path, turned, findings);
        }
        else
        {
            findings.Note("piece.unblocked", "The unblocked piece was not measured: no lay line, no pulls and no stretch can be given.", "Measure it as the measuring form shows and add \"unblocked\".");
        }

        if (finished is null)
            return null;
        EdgeTreatment[] edges = [.. finished.Edges.Select(e => request.Edges.GetValueOrDefault(e.Name, EdgeTreatment.Unsaid))];
        var stations = StationPlaces.Of(finished, unblocked, edges, findings);
        var (whole, lies) = PointedOutlines.Of(finished, unblocked, edges, stations, findings);
        if (whole is null || !findings.IsClean)
            return null;
        var piece = new Piece(
            whole,
            lies,
            edges,
            request.FaceUp,
            turned ? request.Fabric with { GrainDegrees = -request.Fabric.GrainDegrees } : request.Fabric)
        {
            Stations = stations,
        };
        return request.IsMirrored ? piece.Mirrored() : piece;
    }

    private static Outline TurnedOver(Outline outline, PieceKind kind) =>
        kind.GivenByCorners ? outline.SeenFromBehind() : LeftAndRight.Renamed(outline.SeenFromBehind());

    private static Measurements Prepared(PieceRequest request, Measurements measured, Findings findings)
    {
        if (request.Kind.GivenByCorners)
        {
            if (request.EvenOut)
                findings.Note("piece.evenOut", "A general outline is used as it was given; left and right are not evened out.", "Even out the corners and edges by hand, or use a named shape.");
            return measured;
        }

        if (request.EvenOut)
            return LeftAndRight.Averaged(measured, findings);
        LeftAndRight.Offer(measured, findings);
        return measured;
    }

    private static Outline? Whole(Outline? outline, string path, Findings findings)
    {
        if (outline is null)
            return null;
        if (outline.HullArea() < SmallestAreaMm2)
        {
            findings.Problem(path, "The outline holds no area.", "Check the measurements and their units.");
            return null;
        }

        if (OutlineCrossing.Find(outline) is var (at, edges))
        {
            var which = string.Join(" and ", edges.Select(e => $"\"{outline.Edges[e].Name}\""));
            findings.Problem(path, $"The outline crosses or touches itself near x {findings.Say(at.X)}, y {findings.Say(at.Y)}{(which.Length > 0 ? $", at edge {which}" : "")}.", "Check the bows there: inward is negative. Two edges may meet only at their corner.");
            return null;
        }

        var area = outline.SignedArea();
        if (area >= SmallestAreaMm2)
            return outline;
        if (area > -SmallestAreaMm2)
            findings.Problem(path, "The outline holds no area.", "Check the measurements and their units.");
        else
            findings.Problem($"{path}.corners", "The corners run clockwise.", "List them counter-clockwise, as seen looking down on the piece.");
        return null;
    }

    /// <summary>The unblocked outline with its edges in the finished outline's order.</summary>
    private static Outline? Matched(Outline unblocked, Outline finished, string path, bool turned, Findings findings)
    {
        var n = finished.Edges.Count;
        if (unblocked.Edges.Count != n)
        {
            findings.Problem($"{path}.edges", $"The finished outline has {n} edges, the unblocked one {unblocked.Edges.Count}.", "Give both the same edges in the same order; add a corner where one is missing.");
            return null;
        }

        for (var start = 0; start < n; start++)
        {
            if (Enumerable.Range(0, n).All(i => unblocked.Edges[(start + i) % n].Name == finished.Edges[i].Name))
            {
                return new(
                    [.. Enumerable.Range(0, n).Select(i => unblocked.Edges[(start + i) % n])],
                    [.. Enumerable.Range(0, n).Select(i => unblocked.Corners[(start + i) % n] with { Smooth = finished.Corners[i].Smooth })]);
            }
        }

        findings.Problem(
            $"{path}.edges",
            $"The edges do not match: finished {Names(finished)}; unblocked {Names(unblocked)}{(turned ? " (turned over)" : "")}.",
            turned ? "Name every edge in both. Measured with the other side up, the same edges come in the reverse order, counter-clockwise as you saw them." : "Give both the same edge names in the same order.");
        return null;
    }

    private static string Names(Outline outline) => string.Join(", ", outline.Edges.Select(e => e.Name));
}
