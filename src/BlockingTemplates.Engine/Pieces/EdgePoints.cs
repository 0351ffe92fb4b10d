using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>The points or scallops of an edge, evenly spread between its corners, which are valleys.</summary>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Depth">How far the finished tips stand outward of the line through the valleys, above 0.</param>
/// <param name="UnblockedDepth">How far the unblocked ones do, above 0; null: in the same measure smaller or greater as the edge is.</param>
/// <param name="Shape">What they look like.</param>
/// <param name="Valleys">What is done with the valleys.</param>
public sealed record EdgePoints(int Count, Length Depth, Length? UnblockedDepth = null, PointShape Shape = PointShape.Point, Valleys Valleys = Valleys.Free)
{
    /// <summary>What one of them is called.</summary>
    public string Word => Shape == PointShape.Scallop ? "scallop" : "point";

    /// <summary>What they are called, with their number.</summary>
    public string Words => FormattableString.Invariant($"{Count} {Word}{(Count == 1 ? "" : "s")}");
}
