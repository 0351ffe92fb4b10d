namespace BlockingTemplates.Engine.Shapes;

/// <summary>A connected part of a region between an upper and a lower line, whose every upright cut is one stretch.</summary>
/// <param name="Box">Its box.</param>
/// <param name="Upper">Its upper line.</param>
/// <param name="LowerUpsideDown">Its lower line, heights negative.</param>
internal sealed record UprightPiece(Box Box, Profile Upper, Profile LowerUpsideDown)
{
    /// <summary>Cuts the region inside a ring into such pieces.</summary>
    /// <remarks>
    /// Trapezoids between neighbouring abscissas of the ring's points (even-odd rule), strung together where both
    /// their lines run on through the same or the next side of the ring. A piece too many is only slower, never wrong.
    /// </remarks>
    /// <param name="ring">A ring that does not cross itself, first point not repeated, either way round.</param>
    public static IReadOnlyList<UprightPiece> Cut(IReadOnlyList<Point> ring) => new Sweep(ring).Pieces();

    private sealed class Sweep(IReadOnlyList<Point> ring)
    {
        private readonly int[] _lowerStamp = Enumerable.Repeat(-2, ring.Count).ToArray();
        private readonly Growing?[] _byLower = new Growing?[ring.Count];
        private readonly List<Growing> _grown = [];

        private Point A(int side) => ring[side];

        private Point B(int side) => ring[(side + 1) % ring.Count];

        private Point Left(int side) => A(side).X < B(side).X ? A(side) : B(side);

        private Point Right(int side) => A(side).X < B(side).X ? B(side) : A(side);

        /// <summary>The other side at a side's left end.</summary>
        private int Before(int side) => A(side).X < B(side).X ? (side + ring.Count - 1) % ring.Count : (side + 1) % ring.Count;

        private double HeightAt(int side, double x)
        {
            var (p, q) = (Left(side), Right(side));
            return x <= p.X ? p.Y : x >= q.X ? q.Y : p.Y + ((x - p.X) / (q.X - p.X) * (q.Y - p.Y));
        }

        public IReadOnlyList<UprightPiece> Pieces()
        {
            var sides = Enumerable.Range(0, ring.Count).Where(i => A(i).X != B(i).X).OrderBy(i => Left(i).X).ToArray();
            var cuts = ring.Select(p => p.X).Distinct().Order().ToArray();
            var active = new List<(int Side, double Height)>();
            var next = 0;
            for (var c = 0; c + 1 < cuts.Length; c++)
            {
                var (from, to) = (cuts[c], cuts[c + 1]);
                active.RemoveAll(a => Right(a.Side).X <= from);
                for (; next < sides.Length && Left(sides[next]).X <= from; next++)
                    active.Add((sides[next], 0));
                Order(active, from + ((to - from) / 2));
                for (var i = 0; i + 1 < active.Count; i += 2)
                    Extend(c, from, to, active[i].Side, active[i + 1].Side);
            }

            return [.. _grown.Select(g => g.Finished(this))];
        }

        private void Order(List<(int Side, double Height)> active, double x)
        {
            for (var i = 0; i < active.Count; i++)
            {
                var moving = (active[i].Side, Height: HeightAt(active[i].Side, x));
                var j = i;
                for (; j > 0 && active[j - 1].Height > moving.Height; j--)
                    active[j] = active[j - 1];
                active[j] = moving;
            }
        }

        private void Extend(int cut, double from, double to, int lower, int upper)
        {
            var piece = Continued(cut, lower, lower, upper) ?? Continued(cut, Before(lower), lower, upper);
            if (piece is null)
            {
                piece = new() { LowerSide = lower, UpperSide = upper };
                piece.Lower.Add(new(from, HeightAt(lower, from)));
                piece.Upper.Add(new(from, HeightAt(upper, from)));
                _grown.Add(piece);
            }

            if (piece.LowerSide != lower)
                piece.Lower.Add(Left(lower));
            if (piece.UpperSide != upper)
                piece.Upper.Add(Left(upper));
            (piece.LowerSide, piece.UpperSide, piece.To) = (lower, upper, to);
            (_byLower[lower], _lowerStamp[lower]) = (piece, cut);
        }

        private Growing? Continued(int cut, int earlier, int lower, int upper)
        {
            if (_lowerStamp[earlier] != cut - 1 || _byLower[earlier] is not { } piece || piece.LowerSide != earlier)
                return null;
            if (earlier != lower && Right(earlier) != Left(lower))
                return null;
            var sameUpper = piece.UpperSide == upper || (piece.UpperSide == Before(upper) && Right(piece.UpperSide) == Left(upper));
            return sameUpper ? piece : null;
        }

        private sealed class Growing
        {
            public List<Point> Lower { get; } = [];

            public List<Point> Upper { get; } = [];

            public int LowerSide { get; set; }

            public int UpperSide { get; set; }

            public double To { get; set; }

            public UprightPiece Finished(Sweep sweep)
            {
                Lower.Add(new(To, sweep.HeightAt(LowerSide, To)));
                Upper.Add(new(To, sweep.HeightAt(UpperSide, To)));
                return new(Shapes.Box.Around(Lower.Concat(Upper)), new(Upper), new(Lower, upsideDown: true));
            }
        }
    }
}
