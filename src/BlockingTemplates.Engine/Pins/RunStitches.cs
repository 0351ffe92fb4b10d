namespace BlockingTemplates.Engine.Pins;

/// <summary>The places on a run of edges where a mark may stand: stitches where they are counted, anywhere else.</summary>
/// <param name="Run">The run.</param>
/// <param name="Edges">What is planned for all edges.</param>
/// <param name="IsOwnMirror">Whether the run is symmetric about its middle, and its places shall be.</param>
public sealed record RunStitches(EdgeRun Run, IReadOnlyList<EdgePlan> Edges, bool IsOwnMirror)
{
    private const double Contact = 1e-6;

    /// <summary>A place this near (in stitches) to half-way between two stitches goes to the later one, whatever the last digit says.</summary>
    private const double HalfWay = 1e-9;

    /// <summary>The nearest stitch where the edge is counted, else the place itself; mirrored places of a symmetric run go to mirrored stitches.</summary>
    public double Nearest(double place)
    {
        if (IsOwnMirror && place > (Run.Length / 2) + Contact)
            return Run.Length - Nearest(Run.Length - place);
        var (edge, fraction) = Run.Locate(place);
        if (Edges[edge] is not { Treatment.Count: { } count, Match: var match })
            return place;
        return Run.PositionOf(edge, match.PinnedAt(Math.Min(Math.Floor((match.ShareAt(fraction) * count) + 0.5 + HalfWay) / count, 1)))!.Value;
    }

    /// <summary>The next stitch at a place or beyond it, where the edge is counted, else the place itself.</summary>
    /// <param name="place">The place.</param>
    /// <param name="onward">Whether to look onward; else back.</param>
    public double Next(double place, bool onward)
    {
        if (IsOwnMirror && place > (Run.Length / 2) + Contact)
            return Run.Length - Next(Run.Length - place, !onward);
        var (edge, fraction) = Run.Locate(place);
        if (Edges[edge] is not { Treatment.Count: { } count, Match: var match })
            return place;
        var at = match.ShareAt(fraction) * count;
        return Run.PositionOf(edge, match.PinnedAt(Math.Clamp((onward ? Math.Ceiling(at - HalfWay) : Math.Floor(at + HalfWay)) / count, 0, 1)))!.Value;
    }

    /// <summary>Whether a mark may stand at the middle of a symmetric run.</summary>
    public bool IsMiddleFree => Math.Abs(Nearest(Run.Length / 2) - (Run.Length / 2)) < Contact;
}
