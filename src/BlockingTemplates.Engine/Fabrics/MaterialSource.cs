namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Where it is known from how much the cloth gives.</summary>
public enum MaterialSource
{
    /// <summary>From its kind, by an assumption.</summary>
    AssumedByKind,

    /// <summary>From its kind, by published measurements of such cloth.</summary>
    MeasuredByKind,

    /// <summary>Along against across from the maker's swatch, the rest from its kind.</summary>
    Swatch,

    /// <summary>From the maker's three strips.</summary>
    Strips,
}
