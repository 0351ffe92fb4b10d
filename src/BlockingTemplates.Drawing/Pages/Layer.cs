namespace BlockingTemplates.Drawing.Pages;

/// <summary>A layer that a viewer may switch on and off.</summary>
/// <param name="Name">Its name in words.</param>
public sealed record Layer(string Name);
