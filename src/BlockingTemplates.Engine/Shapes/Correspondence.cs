namespace BlockingTemplates.Engine.Shapes;

/// <summary>Which point of an edge belongs where: by its share of the edge's stitches, its fraction of the pinned line and its fraction of the unblocked one.</summary>
/// <remarks>All three run from 0 to 1 and are joined by straight lines between known places. Even unless known otherwise: all three are equal.</remarks>
public sealed class Correspondence
{
    private const double Same = 1e-9;

    private readonly double[] _share;
    private readonly double[] _pinned;
    private readonly double[] _unblocked;

    /// <summary>The correspondence through known places: each of the three strictly increasing, from 0, 0, 0 to 1, 1, 1.</summary>
    public Correspondence(IReadOnlyList<(double Share, double Pinned, double Unblocked)> known)
    {
        ArgumentNullException.ThrowIfNull(known);
        _share = [.. known.Select(k => k.Share)];
        _pinned = [.. known.Select(k => k.Pinned)];
        _unblocked = [.. known.Select(k => k.Unblocked)];
        foreach (var places in new[] { _share, _pinned, _unblocked })
        {
            if (places is not [0, .., 1] || !Increasing.Strictly(places))
                throw new ArgumentException("Known places increase from 0 to 1.", nameof(known));
        }

        IsEven = known.All(k => Math.Abs(k.Share - k.Pinned) < Same && Math.Abs(k.Share - k.Unblocked) < Same);
    }

    /// <summary>Stitches lie evenly along both lines.</summary>
    public static Correspondence Even { get; } = new([(0, 0, 0), (1, 1, 1)]);

    /// <summary>Whether all three are equal everywhere.</summary>
    public bool IsEven { get; }

    /// <summary>Fractions of the pinned line where the known places lie, 0 and 1 included.</summary>
    public IReadOnlyList<double> Pinned => _pinned;

    /// <summary>The share of the stitches at a fraction of the pinned line.</summary>
    public double ShareAt(double pinned) => Between(pinned, _pinned, _share);

    /// <summary>The fraction of the pinned line at a share of the stitches.</summary>
    public double PinnedAt(double share) => Between(share, _share, _pinned);

    /// <summary>The fraction of the unblocked line at a fraction of the pinned one.</summary>
    public double UnblockedAt(double pinned) => Between(pinned, _pinned, _unblocked);

    /// <summary>The fraction of the pinned line at a fraction of the unblocked one.</summary>
    public double PinnedOf(double unblocked) => Between(unblocked, _unblocked, _pinned);

    /// <summary>The correspondence of the edge travelled the other way.</summary>
    public Correspondence Reversed() => new([.. Enumerable.Range(1, _share.Length).Select(i => (1 - _share[^i], 1 - _pinned[^i], 1 - _unblocked[^i]))]);

    /// <summary>Whether another edge travelled the other way corresponds alike.</summary>
    public bool Mirrors(Correspondence other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return _pinned.Select(p => 1 - p).Concat(other._pinned).All(p =>
            Math.Abs(other.ShareAt(p) - (1 - ShareAt(1 - p))) < Same && Math.Abs(other.UnblockedAt(p) - (1 - UnblockedAt(1 - p))) < Same);
    }

    private double Between(double at, double[] from, double[] to)
    {
        if (at is not (>= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(at), "A fraction of an edge lies between 0 and 1.");
        if (IsEven)
            return at;
        var found = Array.BinarySearch(from, at);
        if (found >= 0)
            return to[found];
        var i = ~found;
        return to[i - 1] + ((to[i] - to[i - 1]) * (at - from[i - 1]) / (from[i] - from[i - 1]));
    }
}
