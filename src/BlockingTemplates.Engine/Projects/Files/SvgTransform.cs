using System.Globalization;
using System.Text.RegularExpressions;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Reads the list of transforms of an SVG element (SVG 1.1, section 7.6).</summary>
internal static partial class SvgTransform
{
    private const int MostTransforms = 100;

    /// <summary>The map of a list of transforms, the last one applied first; none for null.</summary>
    public static Affine Read(string? text)
    {
        var map = Affine.Identity;
        if (text is null)
            return map;
        var matches = One().Matches(text);
        if (matches.Count > MostTransforms || One().Replace(text, "").Any(c => !char.IsWhiteSpace(c) && c != ','))
            throw Refused(text);
        foreach (Match match in matches)
        {
            var numbers = new List<double>();
            foreach (var part in match.Groups[2].Value.Split([' ', ',', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
            {
                if (!double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
                    throw Refused(text);
                numbers.Add(number);
            }

            map = (Of(match.Groups[1].Value, numbers) ?? throw Refused(text)).Then(map);
        }

        return map;
    }

    private static Affine? Of(string name, List<double> n) => (name, n) switch
    {
        ("matrix", [var a, var b, var c, var d, var e, var f]) => new(a, c, e, b, d, f),
        ("translate", [var x]) => Affine.Shift(new(x, 0)),
        ("translate", [var x, var y]) => Affine.Shift(new(x, y)),
        ("scale", [var s]) => new(s, 0, 0, 0, s, 0),
        ("scale", [var x, var y]) => new(x, 0, 0, 0, y, 0),
        ("rotate", [var angle]) => Affine.Turn(Radians(angle)),
        ("rotate", [var angle, var x, var y]) => Affine.Shift(new(-x, -y)).Then(Affine.Turn(Radians(angle))).Then(Affine.Shift(new(x, y))),
        ("skewX", [var angle]) => new(1, Math.Tan(Radians(angle)), 0, 0, 1, 0),
        ("skewY", [var angle]) => new(1, 0, 0, Math.Tan(Radians(angle)), 1, 0),
        _ => null,
    };

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static OutlineRefusal Refused(string text) =>
        new($"The transform \"{(text.Length > 40 ? text[..40] + "..." : text)}\" cannot be read.", "Take transforms out in the drawing program (ungroup, or flatten transforms), or save as plain SVG.");

    [GeneratedRegex(@"\b(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)", RegexOptions.CultureInvariant)]
    private static partial Regex One();
}
