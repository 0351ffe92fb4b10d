namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>The wires of one edge and the marks that hold them. Arc lengths of the pinned edge from its first corner, in millimetres.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Form">What the wires are.</param>
/// <param name="Lengths">Their lengths, in millimetres, and whether each is at hand.</param>
/// <param name="Reaches">Where each enters and leaves the edge.</param>
/// <param name="Marks">The marks, both corners included.</param>
/// <param name="MarksIfSoft">How many marks the softest cloth of the range would ask for, both corners included.</param>
/// <param name="Pull">The cloth's pull on the edge.</param>
/// <param name="ToleranceMm">How far the wire may lie from the edge: the scallop less what the cloth dips between the stitches on the wire.</param>
/// <param name="DipBetweenStitchesMm">How far the cloth dips between the stitches on the wire; 0 where it goes through every one.</param>
/// <param name="SagMm">Greatest sag of each wire under the greatest and the least pull.</param>
/// <param name="IsLimp">Whether the wire is too limp to save any pin.</param>
/// <param name="Tightest">Where the edge turns tightest.</param>
public sealed record WiredEdge(
    int Edge,
    WireForm Form,
    IReadOnlyList<(double LengthMm, bool Owned)> Lengths,
    IReadOnlyList<(double From, double To)> Reaches,
    IReadOnlyList<double> Marks,
    int MarksIfSoft,
    EdgePull Pull,
    double ToleranceMm,
    double DipBetweenStitchesMm,
    IReadOnlyList<(double Most, double Least)> SagMm,
    bool IsLimp,
    WireBend Tightest)
{
    /// <summary>Whether the wire can follow the edge and come back straight.</summary>
    public bool Follows => Tightest.RadiusMm >= Form.TightestRadiusMm;

    /// <summary>By how much the edge may dip at most: the wire under the greatest pull, and the cloth between the stitches on it.</summary>
    public double MayDipMm => SagMm.Max(s => Math.Max(Math.Abs(s.Most), Math.Abs(s.Least))) + DipBetweenStitchesMm;

    /// <summary>The same wires on the edge that mirrors this one.</summary>
    /// <param name="edge">Index of that edge.</param>
    /// <param name="lengthMm">Its length.</param>
    public WiredEdge Mirrored(int edge, double lengthMm) => this with
    {
        Edge = edge,
        Lengths = [.. Lengths.Reverse()],
        Reaches = [.. Reaches.Select(r => (lengthMm - r.To, lengthMm - r.From)).Reverse()],
        Marks = [.. Marks.Select(m => lengthMm - m).Reverse()],
        SagMm = [.. SagMm.Reverse()],
        Tightest = Tightest with { Fraction = 1 - Tightest.Fraction },
    };
}
