using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace BlockingTemplates.Engine.Measure;

/// <summary>Reads a length as people write it.</summary>
/// <remarks>
/// Shapes: <c>36.5</c>, <c>36 1/2</c>, <c>36-1/2</c>, <c>36½</c> and <c>1/2</c>, each with mm, cm, m, in (inch, inches, ″),
/// ft (foot, feet, ′) or yd (yard, yards) behind it, or with none for the file's unit; several parts from the greater unit
/// to the smaller, <c>4 ft 3/4 in</c>, <c>1 m 24 cm</c>. A minus stands in front of the whole. Decimals have a point; a comma
/// is refused, since it may mark decimals or thousands. The same text gives the same length whatever the culture.
/// Time grows with the text's length, which is at most <see cref="LongestText"/> characters.
/// Source of foot and yard (12 and 36 inches): international yard and pound agreement, in force 1 July 1959.
/// </remarks>
public static class LengthText
{
    /// <summary>The most characters a length may have.</summary>
    public const int LongestText = 64;

    /// <summary>Reads a length; never throws on any text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit of a text that names none.</param>
    /// <param name="length">The length, or none at all where it could not be read.</param>
    /// <param name="why">What is wrong and what to write instead, or null.</param>
    /// <returns>Whether the text is a length.</returns>
    public static bool TryRead(string text, LengthUnit unit, out Length length, [NotNullWhen(false)] out string? why)
    {
        var read = IsRead(text, unit, out length, out LengthRefusal? refusal);
        why = refusal is { } r ? $"{r.What} {r.Write}" : null;
        return read;
    }

    internal static bool IsRead(string text, LengthUnit unit, out Length length, [NotNullWhen(false)] out LengthRefusal? refusal)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > LongestText)
        {
            length = Length.Zero;
            refusal = new(
                string.Create(CultureInfo.InvariantCulture, $"This text has {text.Length} characters, more than any length needs."),
                "Write a number and its unit, such as \"48 3/4 in\".");
            return false;
        }

        refusal = new LengthScanner(text).Read(unit, out length);
        return refusal is null;
    }
}
