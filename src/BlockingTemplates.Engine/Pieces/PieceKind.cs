using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>A kind of piece: the measurements it is known by and the outlines they give.</summary>
public abstract class PieceKind
{
    /// <summary>The name of the kind in a project file.</summary>
    public abstract string Shape { get; }

    /// <summary>The measurements of its finished size, all needed; empty for the general outline.</summary>
    public abstract IReadOnlyList<SizeName> FinishedSizes { get; }

    /// <summary>Its edges in order, counter-clockwise; empty where the file names them.</summary>
    public abstract IReadOnlyList<string> EdgeNames { get; }

    /// <summary>Its corners in order, corner i at the start of edge i; empty where the file names them.</summary>
    public abstract IReadOnlyList<string> CornerNames { get; }

    /// <summary>Whether corners and edges are given one by one, as in the general outline.</summary>
    public virtual bool GivenByCorners => false;

    /// <summary>Whether a diagonal may be given with the unblocked sides.</summary>
    public virtual bool TakesDiagonal => false;

    /// <summary>What its greatest width is called.</summary>
    public virtual string AcrossName => "width";

    /// <summary>What its greatest height is called.</summary>
    public virtual string UpName => "height";

    /// <summary>An unblocked piece of this kind as it may come off the needles, for the measuring form's drawing; millimetres, invented.</summary>
    public abstract Outline Sketch { get; }

    /// <summary>The finished outline, or null after adding at least one problem.</summary>
    /// <param name="measured">The finished measurements.</param>
    /// <param name="findings">Takes every problem and note found, with its path.</param>
    public abstract Outline? Finished(Measurements measured, Findings findings);

    /// <summary>The unblocked outline as measured, or null after adding at least one problem.</summary>
    /// <param name="measured">The unblocked measurements.</param>
    /// <param name="findings">Takes every problem and note found, with its path.</param>
    public abstract Outline? Unblocked(Measurements measured, Findings findings);
}
