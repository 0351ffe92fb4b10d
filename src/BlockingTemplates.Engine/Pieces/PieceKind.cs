using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A kind of piece: the measurements it is known by and the outlines they give.</summary>
public abstract class PieceKind
{
    /// <summary>The name of the kind in a project file: one word, the trade's or standard geometry's.</summary>
    public abstract string Shape { get; }

    /// <summary>The measurements of its finished size; empty for the general outline.</summary>
    public abstract IReadOnlyList<SizeName> FinishedSizes { get; }

    /// <summary>The measurements of its unblocked size by name; empty where it is measured by sides, or given by corners.</summary>
    public virtual IReadOnlyList<SizeName> UnblockedSizes => [];

    /// <summary>Its edges in order, counter-clockwise; empty where the file names them.</summary>
    public abstract IReadOnlyList<string> EdgeNames { get; }

    /// <summary>Its corners in order, corner i at the start of edge i; empty where the file names them.</summary>
    public abstract IReadOnlyList<string> CornerNames { get; }

    /// <summary>The edges that are straight unless a bow is given for them.</summary>
    public virtual IReadOnlyList<string> StraightEdges => EdgeNames;

    /// <summary>Whether corners and edges are given one by one, as in the general outline.</summary>
    public virtual bool GivenByCorners => false;

    /// <summary>Whether it is measured unblocked by straight sides from corner to corner, bows, and tape along edges.</summary>
    public bool IsMeasuredBySides => !GivenByCorners && UnblockedSizes.Count == 0;

    /// <summary>Whether a diagonal may be given with the unblocked sides.</summary>
    public virtual bool TakesDiagonal => false;

    /// <summary>Whether its outline runs smoothly through its corners, with no forced pin there.</summary>
    public virtual bool IsRound => false;

    /// <summary>What its greatest width is called.</summary>
    public virtual string AcrossName => "width";

    /// <summary>What its greatest height is called.</summary>
    public virtual string UpName => "height";

    /// <summary>Its name with its article: a triangle, an octagon.</summary>
    public string WithArticle => (Shape[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "an " : "a ") + Shape;

    /// <summary>An unblocked piece of this kind as it may come off the needles, for the measuring form's drawing; millimetres, invented.</summary>
    public abstract Outline Sketch { get; }

    /// <summary>Where the tape lies on the sketch for the unblocked measurements by name.</summary>
    public virtual IReadOnlyList<TapeLine> TapeLines => [];

    /// <summary>The finished outline, or null after adding at least one problem.</summary>
    /// <param name="measured">The finished measurements.</param>
    /// <param name="findings">Takes every problem and note found, with its path.</param>
    public abstract Outline? Finished(Measurements measured, Findings findings);

    /// <summary>The unblocked outline as measured, or null after adding at least one problem.</summary>
    /// <param name="measured">The unblocked measurements.</param>
    /// <param name="findings">Takes every problem and note found, with its path.</param>
    public abstract Outline? Unblocked(Measurements measured, Findings findings);
}
