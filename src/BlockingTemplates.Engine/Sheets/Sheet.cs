using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>One sheet of the guide.</summary>
/// <param name="Row">Row of the page grid from the lower side, from 1, gaps counted.</param>
/// <param name="Column">Column of the page grid from the left, from 1, gaps counted.</param>
/// <param name="Window">Its own window in the frame: the pitch cell, without its right and upper side.</param>
/// <param name="Joining">Whether it is printed only to join others.</param>
public sealed record Sheet(int Row, int Column, Box Window, bool Joining)
{
    /// <summary>Its name: row and column, such as 2-4.</summary>
    public string Name => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Row}-{Column}");
}
