namespace BlockingTemplates.Engine.Pins.Wires;

/// <summary>One blocking wire of a plan, along one edge.</summary>
/// <param name="Number">Its number, from 1, in the order of the edges.</param>
/// <param name="Edge">Index of its edge.</param>
/// <param name="Form">What it is.</param>
/// <param name="LengthMm">Its length, in millimetres.</param>
/// <param name="Owned">Whether it is at hand; else it has to be bought.</param>
/// <param name="FromMm">Where it enters the edge: arc length of the pinned edge from its first corner, in millimetres.</param>
/// <param name="ToMm">Where it leaves it.</param>
/// <param name="FromCount">Stitch or row where it enters, or null if not counted.</param>
/// <param name="ToCount">Stitch or row where it leaves.</param>
/// <param name="Picked">Stitches or rows it goes through, or null if not known.</param>
/// <param name="SagMm">Greatest distance of the wire from the edge between its marks, inside positive: under the greatest pull
/// that the cloth may have, and under the least.</param>
public sealed record Wire(
    int Number,
    int Edge,
    WireForm Form,
    double LengthMm,
    bool Owned,
    double FromMm,
    double ToMm,
    double? FromCount,
    double? ToCount,
    int? Picked,
    (double Most, double Least) SagMm);
