namespace BlockingTemplates.Drawing.Pages;

/// <summary>How an area is filled (non-zero winding).</summary>
/// <param name="Grey">0 black to 1 white.</param>
public sealed record Fill(double Grey = 0);
