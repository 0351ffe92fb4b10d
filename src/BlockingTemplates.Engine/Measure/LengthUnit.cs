namespace BlockingTemplates.Engine.Measure;

/// <summary>The units a maker may read and write lengths in.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres, written "mm".</summary>
    Millimetres,

    /// <summary>Centimetres, written "cm".</summary>
    Centimetres,

    /// <summary>Inches, written "in".</summary>
    Inches,
}
