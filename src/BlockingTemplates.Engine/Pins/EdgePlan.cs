using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pins;

/// <summary>What is planned for one edge. Lengths in millimetres.</summary>
public sealed record EdgePlan
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What was said of it.</summary>
    public required EdgeTreatment Treatment { get; init; }

    /// <summary>Which of its points belongs where.</summary>
    public Correspondence Match { get; init; } = Correspondence.Even;

    /// <summary>Which stitch lies where on its smooth line: <see cref="Match"/> itself where it has no points.</summary>
    public Correspondence Stations { get; init; } = Correspondence.Even;

    /// <summary>What a tape laid along it unblocked reads as it was measured, dry if it was, over the valleys of its points; null if not measured.</summary>
    public double? TapeMm { get; init; }

    /// <summary>Its length when finished, along its points where it has any.</summary>
    public required double FinishedMm { get; init; }

    /// <summary>Its length when pinned.</summary>
    public required double PinnedMm { get; init; }

    /// <summary>Its length unblocked, or null if not measured.</summary>
    public double? UnblockedMm { get; init; }

    /// <summary>Its length as it was measured dry, where the piece was and <see cref="UnblockedMm"/> is the damp length; else null.</summary>
    public double? DryMm { get; init; }

    /// <summary>Width of one stitch or row along it on the pinned piece, or null if not known.</summary>
    public double? StitchMm { get; init; }

    /// <summary>Widest gap between pins away from corners.</summary>
    public required double SpacingMm { get; init; }

    /// <summary>How the spacing came about, in words.</summary>
    public required string SpacingRule { get; init; }

    /// <summary>By how much the edge may dip between its pins at most (closed form, an upper estimate), or null where not known.</summary>
    public double? MayDipMm { get; init; }

    /// <summary>Where on that tape the edge point of a fraction of the pinned edge lies, in millimetres; null if not measured.</summary>
    public double? OnTape(double fraction) => TapeMm * Stations.UnblockedAt(Stations.PinnedAt(Match.ShareAt(fraction)));

    /// <summary>Pinned length over unblocked length, less 1; null if not measured.</summary>
    public double? Stretch => UnblockedMm is { } unblocked ? (PinnedMm / unblocked) - 1 : null;
}
