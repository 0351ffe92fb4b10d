using System.Globalization;
using System.Xml;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Reads one closed path of an SVG drawing at true size: millimetres, y up, from the drawing's lower left.</summary>
/// <remarks>
/// Source: Scalable Vector Graphics (SVG) 1.1, 2nd ed., W3C 2011, sections 4.2 (units), 7.6 to 7.8 (transforms, viewBox). No DTD is read, no
/// reference followed, no style looked at; a pixel is 1/96 inch (CSS 2.1, section 4.3.2).
/// </remarks>
internal static class SvgOutline
{
    private const double PixelsPerInch = 96;
    private const double PicasPerInch = 6;
    private const int MostDepth = 64;
    private const double ClosedMm = 0.01;
    private static readonly string[] NotDrawn = ["defs", "clipPath", "mask", "pattern", "marker", "symbol", "metadata"];

    /// <summary>The curves of the path in order, the last one ending where the first one starts; and whether its size was given in pixels.</summary>
    public static (IReadOnlyList<EdgeCurve> Ring, bool InPixels) Read(byte[] bytes, string? pathId)
    {
        try
        {
            using var stream = new MemoryStream(bytes, writable: false);
            using var xml = XmlReader.Create(stream, new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = FileBeside.MostBytes });
            return Read(xml, pathId);
        }
        catch (XmlException e)
        {
            throw new OutlineRefusal($"The file is no SVG drawing that can be read: {e.Message}", "Save it as plain SVG, without a document type and without entities.");
        }
    }

    private static (IReadOnlyList<EdgeCurve> Ring, bool InPixels) Read(XmlReader xml, string? pathId)
    {
        if (xml.MoveToContent() != XmlNodeType.Element || xml.LocalName != "svg")
            throw new OutlineRefusal("The file is no SVG drawing: it does not begin with svg.", "Save the drawing as plain SVG.");
        var (page, inPixels) = SvgPage(xml);
        var maps = new Affine[MostDepth + 1];
        maps[0] = SvgTransform.Read(xml.GetAttribute("transform")).Then(page);
        List<(string? Id, string Data, Affine Map)> paths = [];
        xml.Read();
        while (!xml.EOF)
        {
            if (xml.NodeType == XmlNodeType.Element && NotDrawn.Contains(xml.LocalName))
            {
                xml.Skip();
                continue;
            }

            if (xml.NodeType == XmlNodeType.Element)
            {
                if (xml.Depth > MostDepth)
                    throw new OutlineRefusal("The drawing's groups are nested too deep.", "Ungroup it, or save the path alone.");
                if (xml.LocalName == "svg")
                    throw new OutlineRefusal("The drawing holds another drawing.", "Save the path alone as plain SVG.");
                maps[xml.Depth] = SvgTransform.Read(xml.GetAttribute("transform")).Then(maps[xml.Depth - 1]);
                if (xml.LocalName == "path")
                    paths.Add((xml.GetAttribute("id"), xml.GetAttribute("d") ?? "", maps[xml.Depth]));
            }

            xml.Read();
        }

        return (Ring(Chosen(paths, pathId)), inPixels);
    }

    private static (string? Id, string Data, Affine Map) Chosen(List<(string? Id, string Data, Affine Map)> paths, string? pathId)
    {
        var found = pathId is null ? paths : [.. paths.Where(p => p.Id == pathId)];
        if (found is [var only])
            return only;
        var ids = string.Join(", ", paths.Select(p => p.Id).OfType<string>().Take(20).Select(i => $"\"{i}\""));
        if (paths.Count == 0)
            throw new OutlineRefusal("The drawing holds no path.", "Turn the shape into a path in the drawing program (object to path), and save as plain SVG.");
        throw pathId is null
            ? new OutlineRefusal($"The drawing holds {paths.Count} paths.", $"Name the one to use by its id: \"pathId\": \"...\". Ids in it: {(ids.Length > 0 ? ids : "none")}.")
            : new OutlineRefusal($"The drawing holds {found.Count} paths with the id \"{pathId}\".", $"Name one that is there once. Ids in it: {(ids.Length > 0 ? ids : "none")}.");
    }

    private static List<EdgeCurve> Ring((string? Id, string Data, Affine Map) path)
    {
        var parts = SvgPathReader.Read(path.Data);
        if (parts is not [var curves])
            throw new OutlineRefusal($"The path has {parts.Count} parts; an outline is one closed line.", "Break the path apart in the drawing program and keep the outer line.");
        if (!(Math.Abs(path.Map.Determinant) > 1e-12))
            throw new OutlineRefusal("A transform squeezes the path to nothing.", "Take transforms out in the drawing program.");
        List<EdgeCurve> ring = [.. curves.Select(c => c.Mapped(path.Map))];
        var gap = ring[^1].End.DistanceTo(ring[0].Start);
        if (gap > ClosedMm)
            throw new OutlineRefusal(string.Create(CultureInfo.InvariantCulture, $"The path is open: its ends lie {gap:0.0} mm apart."), "Close it in the drawing program.");
        if (gap > 0)
            ring.Add(new StraightEdge(ring[^1].End, ring[0].Start));
        return ring;
    }

    /// <summary>From the drawing's own units to millimetres, y up, by width, height and viewBox.</summary>
    private static (Affine Map, bool InPixels) SvgPage(XmlReader xml)
    {
        var (width, widthInPixels) = Size(xml.GetAttribute("width"), "width");
        var (height, heightInPixels) = Size(xml.GetAttribute("height"), "height");
        double left = 0, top = 0, pixel = Length.FromInches(1 / PixelsPerInch).Millimetres;
        var (x, y) = (pixel, pixel);
        if (xml.GetAttribute("viewBox") is { } box)
        {
            var n = box.Split([' ', ',', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(p => double.TryParse(p, NumberStyles.Float, CultureInfo.InvariantCulture, out var v) && double.IsFinite(v) ? v : double.NaN).ToList();
            if (n is not [var boxLeft, var boxTop, > 0, > 0])
                throw new OutlineRefusal($"The drawing's viewBox \"{box}\" cannot be read.", "Save the drawing again as plain SVG.");
            (left, top, x, y) = (boxLeft, boxTop, width / n[2], height / n[3]);
            var align = xml.GetAttribute("preserveAspectRatio")?.Trim() ?? "xMidYMid";
            if (!align.StartsWith("none", StringComparison.Ordinal) && Math.Abs(x - y) > 1e-3 * x)
                throw new OutlineRefusal("The drawing's width and height do not go with its viewBox: it would be drawn with bars beside it.", "Set the page's size and viewBox to the same proportions in the drawing program.");
        }

        return (new(x, 0, -left * x, 0, -y, height + (top * y)), widthInPixels || heightInPixels);
    }

    private static (double Millimetres, bool InPixels) Size(string? text, string name)
    {
        text = text?.Trim() ?? "";
        var end = text.Length;
        while (end > 0 && (char.IsAsciiLetter(text[end - 1]) || text[end - 1] == '%'))
            end--;
        if (!double.TryParse(text[..end], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !(number > 0 && number < 1e6))
            throw new OutlineRefusal($"The drawing does not say its {name}.", "Give width and height with a unit, such as width=\"600mm\" height=\"400mm\", in the drawing program's page settings.");
        return text[end..] switch
        {
            "mm" => (number, false),
            "cm" => (Length.FromCentimetres(number).Millimetres, false),
            "in" => (Length.FromInches(number).Millimetres, false),
            "pt" => (Length.FromPoints(number).Millimetres, false),
            "pc" => (Length.FromInches(number / PicasPerInch).Millimetres, false),
            "" or "px" => (Length.FromInches(number / PixelsPerInch).Millimetres, true),
            var unit => throw new OutlineRefusal($"The drawing's {name} has the unit \"{unit}\", which is no length.", "Give width and height in mm, cm or in."),
        };
    }
}
