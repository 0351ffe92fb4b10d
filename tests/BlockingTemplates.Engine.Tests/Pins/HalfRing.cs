using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pins;

/// <summary>Builds outlines that are symmetric about an upright axis, from corners on their right half.</summary>
/// <param name="Right">Corners on the right half.</param>
/// <param name="HasFoot">Whether a corner stands on the axis below; else an edge runs across it.</param>
/// <param name="HasTop">Whether a corner stands on the axis above; else an edge runs across it.</param>
internal sealed record HalfRing(int Right, bool HasFoot, bool HasTop)
{
    /// <summary>What is said of the edges, from what is said of those on the right.</summary>
    public IReadOnlyList<EdgeTreatment> Edges(EdgeTreatment[] said) => [.. Order().Select(e => said[e.Form])];

    /// <summary>The outline.</summary>
    /// <param name="radii">Distance of each right corner from the middle; the last two for foot and top.</param>
    /// <param name="forms">Forms of the right edges from below upward.</param>
    /// <param name="smooth">Which corners are smooth.</param>
    /// <param name="scale">Scale of all distances.</param>
    /// <param name="turn">Angle by which all is turned, in radians.</param>
    public Outline Ring(double[] radii, (int Kind, double Bow, double Skew)[] forms, bool[] smooth, double scale, double turn)
    {
        Point Place(int corner)
        {
            // Corners: 0 foot, 1..Right from below upward, Right + 1 top; their mirror images are negative.
            var k = Math.Abs(corner);
            var angle = (Math.PI * k / (Right + 1)) - (Math.PI / 2);
            var radius = scale * (k == 0 ? radii[^2] : k == Right + 1 ? radii[^1] : radii[k - 1]);
            var x = k == 0 || k == Right + 1 ? 0 : radius * Math.Cos(angle);
            return new(corner < 0 ? -x : x, radius * Math.Sin(angle));
        }

        List<(int From, int To, int Form)> order = [.. Order()];
        var map = Affine.Turn(turn).Then(Affine.Shift(new(1234, 567)));
        var edges = order.Select((e, i) =>
        {
            var form = forms[e.Form];
            EdgeCurve curve;
            if (Math.Abs(e.From) == Math.Abs(e.To))
                curve = RandomPieces.Line((form.Kind == 3 ? 0 : form.Kind, form.Bow, 0), Place(e.From), Place(e.To));
            else if (e.From >= 0 && e.To > 0)
                curve = RandomPieces.Line(form, Place(e.From), Place(e.To));
            else
                curve = RandomPieces.Line(form, Place(Math.Abs(e.To)), Place(Math.Abs(e.From))).Mapped(Affine.MirrorLeftRight).Reversed();
            return new Edge($"edge {i}", curve.Mapped(map));
        });
        return new([.. edges], [.. order.Select((e, i) => new Corner($"corner {i}", smooth[Math.Abs(e.From) % smooth.Length]))]);
    }

    /// <summary>The edges counter-clockwise, each with its ends and its form.</summary>
    private IEnumerable<(int From, int To, int Form)> Order()
    {
        List<int> right = [.. Enumerable.Range(1, Right)];
        if (HasFoot)
            right.Insert(0, 0);
        if (HasTop)
            right.Add(Right + 1);
        List<int> left = [.. right.Where(c => c > 0 && c <= Right).Reverse().Select(c => -c)];
        List<int> all = [.. right, .. left];
        for (var i = 0; i < all.Count; i++)
        {
            int from = all[i], to = all[(i + 1) % all.Count];
            // An edge and its mirror image share the form of their lower end's place; those across the axis have their own.
            var form = Math.Abs(from) == Math.Abs(to) ? (Math.Abs(from) == 1 && from < 0 ? 0 : Right + 1) : Math.Min(Math.Abs(from), Math.Abs(to));
            yield return (from, to, form);
        }
    }
}
