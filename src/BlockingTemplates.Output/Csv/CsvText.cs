using System.Buffers;
using System.Text;

namespace BlockingTemplates.Output.Csv;

/// <summary>Turns rows of cells into a CSV file (RFC 4180): commas, CRLF after every row, UTF-8 with its mark for spreadsheets.</summary>
/// <remarks>
/// A text that a spreadsheet would take for a formula gets an apostrophe before it: one that starts, after any spaces, with
/// = + - @ or their wide forms, or with a tab or line break (common practice against CSV injection). Other control
/// characters are dropped.
/// </remarks>
public static class CsvText
{
    private static readonly SearchValues<char> Quoted = SearchValues.Create(",\"\r\n");

    private static readonly SearchValues<char> Formula = SearchValues.Create("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");

    /// <summary>The bytes of the file.</summary>
    /// <param name="rows">The rows, heads first.</param>
    public static byte[] Write(IEnumerable<IReadOnlyList<CsvCell>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var text = new StringBuilder();
        foreach (var row in rows) text.AppendJoin(',', row.Select(Written)).Append("\r\n");
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static string Written(CsvCell cell)
    {
        if (cell.IsNumber) return cell.Shown;
        var shown = string.Concat(cell.Shown.Where(c => !char.IsControl(c) || c is '\t' or '\r' or '\n'));
        var start = shown.AsSpan().TrimStart(' ');
        if (start.Length > 0 && Formula.Contains(start[0])) shown = "'" + shown;
        var quote = shown.AsSpan().ContainsAny(Quoted) || shown.StartsWith(' ') || shown.EndsWith(' ');
        return quote ? $"\"{shown.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : shown;
    }
}
