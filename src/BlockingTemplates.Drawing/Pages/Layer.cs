namespace BlockingTemplates.Drawing.Pages;

/// <summary>A layer that a viewer may switch on and off.</summary>
/// <param name="Name">Its name in words.</param>
/// <param name="IsShown">Whether it is shown at first; what cannot be switched shows only such layers.</param>
public sealed record Layer(string Name, bool IsShown = true);
