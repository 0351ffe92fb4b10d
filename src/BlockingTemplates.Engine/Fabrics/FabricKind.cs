namespace BlockingTemplates.Engine.Fabrics;

/// <summary>The kind of cloth, as far as it bears on how far it may be stretched.</summary>
public enum FabricKind
{
    /// <summary>Lace.</summary>
    Lace,

    /// <summary>Open mesh.</summary>
    Mesh,

    /// <summary>Plain knitting (stocking stitch) or plain crochet.</summary>
    Plain,

    /// <summary>Garter stitch.</summary>
    Garter,

    /// <summary>Ribbing.</summary>
    Rib,

    /// <summary>Cables.</summary>
    Cable,
}
