namespace BlockingTemplates.Drawing.Pages;

/// <summary>Weights of the one font family that everything is set in.</summary>
public enum FontWeight
{
    /// <summary>The text weight.</summary>
    Regular,

    /// <summary>The heavy weight, for numbers and heads.</summary>
    Bold,
}
