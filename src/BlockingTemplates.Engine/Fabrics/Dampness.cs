namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How the piece was when its unblocked size was measured.</summary>
public enum Dampness
{
    /// <summary>Dry.</summary>
    Dry,

    /// <summary>Damp: soaked and pressed out, or sprayed.</summary>
    Damp,
}
