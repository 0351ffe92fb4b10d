using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins.Combs;

/// <summary>Combs along an edge, as few as the spacing allows, and single pins where the bar does not follow the edge.</summary>
/// <remarks>All places are arc lengths of the run, which is one edge, in millimetres.</remarks>
public sealed class CombSpacing
{
    private const double Contact = 1e-6;
    private const int Samples = 16;

    private readonly CombSettings _combs;
    private readonly RunStitches _stitches;
    private readonly Func<double, double> _gapAt;
    private readonly EdgeCurve _curve;
    private readonly double _tolerance;

    /// <summary>The combs of an edge.</summary>
    /// <param name="curve">The pinned edge.</param>
    /// <param name="stitches">Where a mark may stand on it.</param>
    /// <param name="gapAt">Widest gap between single pins about a fraction of the edge; gaps beside combs keep it too.</param>
    /// <param name="combs">The combs.</param>
    /// <param name="toleranceMm">How far the edge may lie from the bar, in millimetres, above 0.</param>
    public CombSpacing(EdgeCurve curve, RunStitches stitches, Func<double, double> gapAt, CombSettings combs, double toleranceMm)
    {
        ArgumentNullException.ThrowIfNull(stitches);
        (_curve, _stitches, _gapAt, _combs, _tolerance) = (curve, stitches, gapAt, combs, toleranceMm);
    }

    private double Bar => _combs.Length.Millimetres;

    private double Pitch => Bar / (_combs.Prongs - 1);

    private double Length => _stitches.Run.Length;

    /// <summary>Combs and single pins inside the edge, increasing.</summary>
    /// <param name="pins">Where single pins would stand without combs, increasing.</param>
    /// <param name="forced">Places that keep a single pin.</param>
    public IReadOnlyList<HeldPlace> Places(IReadOnlyList<double> pins, IEnumerable<double> forced)
    {
        ArgumentNullException.ThrowIfNull(pins);
        double[] kept = [.. forced.Where(p => p > Contact && p < Length - Contact).Order()];
        double[] limits = [0, .. kept, Length];
        List<HeldPlace> combs = [.. Enumerable.Range(1, limits.Length - 1).SelectMany(i => Between(limits[i - 1], limits[i]))];
        List<HeldPlace> singles = [.. pins.Where(p => !combs.Exists(c => p > c.FromMm - Contact && p < c.ToMm + Contact)).Select(p => new HeldPlace(p, PinKind.Pin))];
        List<HeldPlace> all = [new(0, PinKind.Pin), .. combs.Concat(singles).OrderBy(h => h.AtMm), new(Length, PinKind.Pin)];
        return Pruned(all, kept);
    }

    /// <summary>Half the arc length that a bar about a place takes, or null where it does not fit: beyond an end, or too far from the edge.</summary>
    public double? HalfAt(double middle)
    {
        var most = Math.Min(middle, Length - middle);
        if (most < Bar / 2 || Chord(middle, most) < Bar - Contact)
            return null;
        var (low, high) = (Bar / 2, most);
        for (var k = 0; k < 60 && high - low > 1e-9; k++)
        {
            var half = (low + high) / 2;
            (low, high) = Chord(middle, half) < Bar ? (half, high) : (low, half);
        }

        return Off(middle, high) <= _tolerance + Contact ? high : null;
    }

    private IEnumerable<HeldPlace> Between(double from, double to)
    {
        // Gaps at the ends of the stretch are as wide against the inner ones as they may be, such as half beside a sharp corner.
        var inner = GapAt((from + to) / 2);
        var (first, last) = (Share(from + (inner / 4)), Share(to - (inner / 4)));
        var most = (int)Math.Floor((to - from - Pitch) / (Bar + Pitch));
        for (var count = 1; count <= most; count++)
        {
            var gap = (to - from - (count * Bar)) / (count - 1 + first + last);
            if (count < most && !Keeps(count, gap))
                continue;
            for (var k = 0; k < count; k++)
            {
                var middle = from + (first * gap) + (Bar / 2) + (k * (Bar + gap));
                var isCentre = _stitches.IsOwnMirror && Math.Abs(middle - (Length / 2)) < Contact;
                var at = isCentre ? Length / 2 : _stitches.Nearest(middle);
                if (HalfAt(at) is { } arc && at - arc > from + Contact && at + arc < to - Contact)
                    yield return new(at, PinKind.Comb, arc);
            }

            yield break;
        }

        double Share(double place) => Math.Clamp(GapAt(place) / inner, 0.3, 1);

        bool Keeps(int count, double gap)
        {
            var at = from;
            for (var k = 0; k <= count; k++)
            {
                var wide = (k == 0 ? first : k == count ? last : 1) * gap;
                if (wide > GapAt(at + (wide / 2)) + Contact)
                    return false;
                at += wide + Bar;
            }

            return true;
        }
    }

    /// <summary>The places without the single pins that the spacing does not need; both ends left out.</summary>
    private List<HeldPlace> Pruned(List<HeldPlace> all, double[] forced)
    {
        for (var i = 1; i < all.Count - 1; i++)
        {
            var place = all[i];
            if (place.Kind != PinKind.Pin || forced.Any(f => Math.Abs(f - place.AtMm) < Contact))
                continue;
            var partner = _stitches.IsOwnMirror ? all.FindIndex(h => Math.Abs(h.AtMm - (Length - place.AtMm)) < Contact) : -1;
            if (!CanGo(all, i) || (partner >= 0 && partner != i && (!CanGo(all, partner) || Math.Abs(partner - i) == 1)))
                continue;
            all.RemoveAt(i);
            if (partner > i)
                all.RemoveAt(partner - 1);
            i--;
        }

        return all[1..^1];
    }

    private bool CanGo(List<HeldPlace> all, int i)
    {
        var (from, to) = (all[i - 1].ToMm, all[i + 1].FromMm);
        return to - from <= GapAt((from + to) / 2) + Contact;
    }

    private double GapAt(double place) => _gapAt(Math.Clamp(place / Length, 0, 1));

    private double Chord(double middle, double half) => At(middle - half).DistanceTo(At(middle + half));

    /// <summary>Greatest distance of the edge from the bar.</summary>
    private double Off(double middle, double half)
    {
        var (from, to) = (At(middle - half), At(middle + half));
        var along = (to - from).Unit;
        return Enumerable.Range(1, Samples - 1).Max(k => Math.Abs(along.Cross(At(middle - half + (2 * half * k / Samples)) - from)));
    }

    private Point At(double mm) => _curve.At(Math.Clamp(mm / Length, 0, 1));
}
