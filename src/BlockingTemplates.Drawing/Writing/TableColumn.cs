using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Drawing.Writing;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head; a line break starts a second line.</param>
/// <param name="Align">Where its cells stand.</param>
/// <param name="Weight">Weight of its cells.</param>
/// <param name="IsBox">Whether it holds empty boxes to tick.</param>
internal sealed record TableColumn(string Head, TextAlign Align = TextAlign.Right, FontWeight Weight = FontWeight.Regular, bool IsBox = false);
