using System.Globalization;
using System.Text;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Reads points of an outline from a CSV file with their unit in its head, such as <c>x cm,y cm</c>; millimetres, y up.</summary>
/// <remarks>One point a line, two numbers with a decimal point, apart by a comma, a semicolon or a tab; joined by straight lines, the last to the first.</remarks>
internal static class CsvOutline
{
    private const int MostPoints = 10_000;
    private const string Form = "Begin with a head such as: x cm,y cm. Then one point a line, such as: 12.5,40";

    /// <summary>The lines in order, the last one ending where the first one starts.</summary>
    public static IReadOnlyList<EdgeCurve> Read(byte[] bytes)
    {
        string text;
        try
        {
            text = new UTF8Encoding(false, true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new OutlineRefusal("The file is no text in UTF-8.", "Save it as CSV in UTF-8.");
        }

        var lines = text.Split('\n').Select((l, i) => (Text: l.Trim(), Line: i + 1)).Where(l => l.Text.Length > 0).ToList();
        if (lines.Count == 0)
            throw new OutlineRefusal("The file is empty.", $"{Form}.");
        if (lines.Count - 1 > MostPoints)
            throw new OutlineRefusal($"The file has more than {MostPoints} points.", "Give points a few millimetres apart, not less.");
        var apart = lines[0].Text.Contains('\t', StringComparison.Ordinal) ? '\t' : lines[0].Text.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        var unit = Unit(lines[0].Text.Split(apart));
        var points = new List<Point>();
        foreach (var (line, number) in lines.Skip(1))
        {
            var cells = line.Split(apart);
            if (cells.Length != 2 || !TryNumber(cells[0], out var x) || !TryNumber(cells[1], out var y))
                throw new OutlineRefusal($"Line {number} of the file is no point: \"{(line.Length > 40 ? line[..40] + "..." : line)}\".", $"{Form}; decimals after a point.");
            var at = new Point(Length.From(x, unit).Millimetres, Length.From(y, unit).Millimetres);
            if (points.Count == 0 || points[^1] != at)
                points.Add(at);
        }

        if (points.Count > 1 && points[^1] == points[0])
            points.RemoveAt(points.Count - 1);
        if (points.Count < 3)
            throw new OutlineRefusal("The file has fewer than three points.", $"{Form}.");
        return [.. points.Select((p, i) => new StraightEdge(p, points[(i + 1) % points.Count]))];
    }

    private static LengthUnit Unit(string[] head)
    {
        if (head is [var first, var second]
            && Column(first) is ("x", { } unit)
            && Column(second) is ("y", { } other)
            && unit == other)
            return unit;
        throw new OutlineRefusal("The file's head does not name x and y with one unit.", $"{Form}; mm, cm or in.");
    }

    private static (string Name, LengthUnit? Unit) Column(string head)
    {
        var words = head.Split([' ', '"', '(', ')', '[', ']', '_'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length != 2
            ? ("", null)
            : (words[0].ToLowerInvariant(), Enum.GetValues<LengthUnit>().Cast<LengthUnit?>().FirstOrDefault(u => LengthWords.UnitOf(u!.Value).Equals(words[1], StringComparison.OrdinalIgnoreCase)));
    }

    private static bool TryNumber(string cell, out double number) =>
        double.TryParse(cell.Trim().Trim('"'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
        && Math.Abs(number) < 1e6;
}
