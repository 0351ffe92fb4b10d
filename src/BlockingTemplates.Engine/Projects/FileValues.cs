namespace BlockingTemplates.Engine.Projects;

// Values of a project file that may be written in more than one way. Only their names are used: the schema says by them
// what may stand there.

/// <summary>A number in the file's units, or text with its own unit.</summary>
internal readonly record struct LengthValue;

/// <summary>Two lengths in a list.</summary>
internal readonly record struct LengthPair;

/// <summary>The name of a kind of piece.</summary>
internal readonly record struct ShapeValue;

/// <summary>The measurements of a finished size, by the kind of piece.</summary>
internal readonly record struct FinishedValue;

/// <summary>The measurements of an unblocked size, by the kind of piece.</summary>
internal readonly record struct UnblockedValue;

/// <summary>[x, y], or a corner with more said of it.</summary>
internal readonly record struct CornerValue;

/// <summary>A number, or one along and one across the rows.</summary>
internal readonly record struct SpringBackValue;

/// <summary>A number, or one along and one across the rows.</summary>
internal readonly record struct WetChangeValue;

/// <summary>A length, or two in a list.</summary>
internal readonly record struct MatSizeValue;

/// <summary>A list of 0 and 90, or free.</summary>
internal readonly record struct TurnsValue;

/// <summary>A paper's name, or several in a list.</summary>
internal readonly record struct PaperValue;
