using System.Globalization;
using System.Text;

namespace BlockingTemplates.Drawing.Text;

/// <summary>What of a maker's text is shown: one place, so that measuring and every writer agree.</summary>
public static class DrawnText
{
    /// <summary>
    /// The text as it is drawn on one line: without control characters, invisible formatting characters
    /// (direction marks, joiners, soft hyphens) and line separators; half a surrogate pair becomes U+FFFD.
    /// </summary>
    public static string Of(string text) => Kept(text, dropFormatting: true, separator: "");

    /// <summary>The text as a title outside the page: as <see cref="Of"/>, but formatting characters stay and a break or tab becomes a space.</summary>
    public static string TitleOf(string text) => Kept(text, dropFormatting: false, separator: " ");

    private static string Kept(string text, bool dropFormatting, string separator)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.All(c => c is >= ' ' and <= '~')) return text;
        var kept = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (Rune.GetUnicodeCategory(rune))
            {
                case UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator:
                case UnicodeCategory.Control when rune.Value is '\t' or '\n' or '\r':
                    kept.Append(separator);
                    break;
                case UnicodeCategory.Control:
                case UnicodeCategory.Format when dropFormatting:
                    break;
                default:
                    if (!IsNoncharacter(rune.Value)) kept.Append(rune);
                    break;
            }
        }

        return kept.ToString();
    }

    // The Unicode Standard, 23.7 Noncharacters: U+FDD0..U+FDEF and the last two of every plane. XML forbids U+FFFE and U+FFFF.
    private static bool IsNoncharacter(int value) => value is >= 0xFDD0 and <= 0xFDEF || (value & 0xFFFE) == 0xFFFE;
}
