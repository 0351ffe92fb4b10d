using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Where the maker measured a stitch or row of an edge, or wants it.</summary>
/// <param name="Stitch">Stitch or row, counted from the edge's first corner.</param>
/// <param name="At">How far along the unblocked edge it lies from that corner, or null if not measured.</param>
/// <param name="Finished">How far along the finished edge it shall lie, or null where it follows evenly.</param>
public sealed record StitchStation(int Stitch, Length? At, Length? Finished);
