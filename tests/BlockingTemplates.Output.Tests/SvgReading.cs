using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Tests;

/// <summary>Reads straight lines back out of our SVGs, following symbols and transforms, in millimetres with y up.</summary>
public static partial class SvgReading
{
    public static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    private static readonly XName Href = XName.Get("href", "http://www.w3.org/1999/xlink");

    public static XElement Open(byte[] svg)
    {
        using var reader = XmlReader.Create(new MemoryStream(svg), new XmlReaderSettings { CheckCharacters = true });
        return XDocument.Load(reader).Root!;
    }

    public static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The named attributes of an element, parted by bars.</summary>
    public static string Values(XElement element, string names) => string.Join('|', names.Split(' ').Select(n => element.Attribute(n)!.Value));

    public static IReadOnlyList<Segment> Lines(XElement root)
    {
        var height = Number(root.Attribute("viewBox")!.Value.Split(' ')[3]);
        var byId = root.Descendants().Where(e => e.Attribute("id") is not null).ToDictionary(e => e.Attribute("id")!.Value);
        var flip = new Affine(1, 0, 0, 0, -1, height);
        var lines = new List<Segment>();
        Walk(root, flip);
        return lines;

        void Walk(XElement element, Affine map)
        {
            if (element.Name == Space + "defs") return;
            map = TransformOf(element).Then(map);
            if (element.Name == Space + "use") Walk(byId[element.Attribute(Href)!.Value[1..]], map);
            if (element.Name == Space + "path" && LinePattern().Match(element.Attribute("d")!.Value) is { Success: true } m)
            {
                var n = m.Groups.Values.Skip(1).Select(g => Number(g.Value)).ToArray();
                lines.Add(new(map.Map(new Point(n[0], n[1])), map.Map(new Point(n[2], n[3]))));
            }

            foreach (var child in element.Elements()) Walk(child, map);
        }
    }

    private static Affine TransformOf(XElement element)
    {
        // The rightmost transform of the list comes first.
        var map = Affine.Identity;
        foreach (var part in TransformPattern().Matches(element.Attribute("transform")?.Value ?? "").Reverse())
        {
            var n = part.Groups[2].Value.Split(' ').Select(Number).ToArray();
            map = map.Then(part.Groups[1].Value switch
            {
                "translate" => Affine.Shift(new(n[0], n[1])),
                "rotate" => Affine.Turn(n[0] * Math.PI / 180),
                "scale" => new(n[0], 0, 0, 0, n[0], 0),
                var other => throw new InvalidOperationException(other),
            });
        }

        return map;
    }

    [GeneratedRegex(@"^M (\S+) (\S+) L (\S+) (\S+)$")]
    private static partial Regex LinePattern();

    [GeneratedRegex(@"(\w+)\(([^)]*)\)")]
    private static partial Regex TransformPattern();
}
