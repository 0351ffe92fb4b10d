using System.Text;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;

namespace BlockingTemplates.Engine.Projects;

/// <summary>Writes a project file with blanks for a kind of piece.</summary>
/// <remarks>Every measurement is null with a comment of where the tape goes; reading the file lists exactly these.</remarks>
public static class BlankProject
{
    private const int CommentColumn = 36;

    private static readonly string[] SampleCorners = ["lower left", "lower right", "upper right", "upper left"];
    private static readonly string[] SampleEdges = ["lower", "right", "top", "left"];

    /// <summary>The file's text, lines apart by \n.</summary>
    /// <param name="kind">The kind of piece.</param>
    /// <param name="units">The units the maker measures in.</param>
    /// <param name="schema">Where the JSON schema stands, seen from the file, or null to leave it out.</param>
    public static string For(PieceKind kind, LengthUnit units, string? schema = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var text = new StringBuilder();
        Line(text, 0, "// A project file with blanks. Write a number in place of each null: in the units below, or text with");
        Line(text, 0, "// its own unit, such as \"48 3/4 in\" or \"1.24 m\". Then `check` the file; it lists what is still blank.");
        Line(text, 0, "{");
        if (schema is not null)
            Line(text, 1, $"\"$schema\": {Quoted(schema)},");
        Line(text, 1, "\"format\": 1,");
        Line(text, 1, "\"title\": \"\",", "printed on the cover");
        Line(text, 1, $"\"units\": {Quoted(LengthWords.UnitOf(units))},", "mm, cm or in");
        Line(text, 1, "\"piece\": {");
        Line(text, 2, $"\"shape\": {Quoted(kind.Shape)},");
        Line(text, 2, "\"faceUp\": \"right side\",", "the side you see while it dries");
        Line(text, 2, "\"measuredFaceUp\": \"right side\",", "the side you saw while you measured");
        Line(text, 2, "\"evenOut\": false,", "true: left and right are averaged");
        if (kind.GivenByCorners)
            AddOutlines(text);
        else
            AddMeasurements(text, kind);
        Line(text, 2, "\"edges\": {}", $"stitches or rows counted: {{ \"{(kind.GivenByCorners ? SampleEdges : kind.EdgeNames)[^1]}\": {{ \"count\": 90, \"of\": \"rows\" }} }}");
        Line(text, 1, "},");
        AddSettings(text, units);
        Line(text, 0, "}");
        return text.ToString();
    }

    private static void AddMeasurements(StringBuilder text, PieceKind kind)
    {
        Line(text, 2, "// The size it should have once it has dried.");
        AddByName(text, "finished", kind, kind.FinishedSizes, "edges that should be curved; else leave it so");
        AddUnblockedComment(text);
        if (!kind.IsMeasuredBySides)
        {
            AddByName(text, "unblocked", kind, kind.UnblockedSizes, "edges that lie curved: how far the middle lies out; minus: in");
            return;
        }

        Line(text, 2, "\"unblocked\": {");
        AddByEdge(text, "sides", kind.EdgeNames, i => $"straight, {kind.CornerNames[i]} to {kind.CornerNames[(i + 1) % kind.CornerNames.Count]}");
        AddByEdge(text, "bows", kind.EdgeNames, _ => "how far its middle lies out from that; minus: in; 0: straight");
        Line(text, 3, "\"along\": {},", "instead of a side or a bow: tape laid along the edge");
        Line(text, 3, kind.TakesDiagonal
            ? $"\"diagonal\": {{ \"from\": {Quoted(kind.CornerNames[0])}, \"to\": {Quoted(kind.CornerNames[2])}, \"length\": null }}"
            : "\"diagonal\": null");
        Line(text, 2, "},");
    }

    private static void AddByName(StringBuilder text, string name, PieceKind kind, IReadOnlyList<SizeName> sizes, string bows)
    {
        Line(text, 2, $"{Quoted(name)}: {{");
        foreach (var size in sizes)
        {
            var written = $"{Quoted(size.Name)}: {(size.IsOptional ? "0" : "null")},";
            var why = size.InsteadOf is { } other ? $"instead of {other}: " : size.IsOptional ? "if it is not 0: " : "";
            Line(text, 3, size.IsAsked ? written : "// " + written, why + size.HowToTake);
        }

        if (kind.StraightEdges.Count > 0)
            Line(text, 3, "\"bows\": {}", $"{bows}: {{ {Quoted(kind.StraightEdges[0])}: -2 }}");
        Line(text, 2, "},");
    }

    private static void AddByEdge(StringBuilder text, string name, IReadOnlyList<string> edges, Func<int, string> comment)
    {
        Line(text, 3, $"{Quoted(name)}: {{");
        for (var i = 0; i < edges.Count; i++)
            Line(text, 4, $"{Quoted(edges[i])}: null{(i < edges.Count - 1 ? "," : "")}", comment(i));
        Line(text, 3, "},");
    }

    private static void AddOutlines(StringBuilder text)
    {
        Line(text, 2, "// The size it should have once it has dried. Corners run counter-clockwise from the lower left: x to the");
        Line(text, 2, "// right, y up, both from the first corner. Edge 1 runs from corner 1 to corner 2, and so on. Add or take");
        Line(text, 2, "// away corners and edges as the piece has them.");
        AddOutline(text, "finished");
        AddUnblockedComment(text);
        AddOutline(text, "unblocked");
    }

    private static void AddOutline(StringBuilder text, string name)
    {
        Line(text, 2, $"{Quoted(name)}: {{");
        Line(text, 3, "\"corners\": [");
        for (var i = 0; i < SampleCorners.Length; i++)
        {
            var at = i == 0 ? "[0, 0]" : "[null, null]";
            Line(text, 4, $"{{ \"name\": {Quoted(SampleCorners[i])}, \"at\": {at} }}{(i < SampleCorners.Length - 1 ? "," : "")}");
        }

        Line(text, 3, "],");
        Line(text, 3, "\"edges\": [", "bow: greatest distance from the straight line, outward; minus: inward; 0: straight");
        for (var i = 0; i < SampleEdges.Length; i++)
            Line(text, 4, $"{{ \"name\": {Quoted(SampleEdges[i])}, \"bow\": null }}{(i < SampleEdges.Length - 1 ? "," : "")}");
        Line(text, 3, "]");
        Line(text, 2, "},");
    }

    private static void AddUnblockedComment(StringBuilder text)
    {
        Line(text, 2, "// The size it has now: lay it flat, pat it, do not pull. Without it (delete \"unblocked\") the plan has no");
        Line(text, 2, "// lay line and no pulls.");
    }

    private static void AddSettings(StringBuilder text, LengthUnit units)
    {
        var isInches = units == LengthUnit.Inches;
        Line(text, 1, "\"fabric\": {");
        Line(text, 2, "\"kind\": null,", "lace, mesh, plain, garter, rib, cable");
        Line(text, 2, "\"fibre\": null,", "such as wool");
        Line(text, 2, "\"measured\": null,", "dry or damp: as it was when you measured it");
        Line(text, 2, "\"springBack\": 0", "0.03: pinned 3 % longer than it stays");
        Line(text, 1, "},");
        Line(text, 1, "\"pins\": { \"owned\": null },");
        Line(text, 1, $"\"mats\": {{ \"size\": {(isInches ? "\"12 in\"" : "\"30 cm\"")}, \"owned\": null }},", "size: two joined mats less one");
        Line(text, 1, $"\"sheets\": {{ \"paper\": [\"{(isInches ? "Letter" : "A4")}\"] }},");
        Line(text, 1, "\"set\": { \"method\": null, \"label\": null },", "wet, spray, steam; no iron, no steam, one dot, two dots, three dots");
        Line(text, 1, "\"notes\": \"\"", "printed on the cover");
    }

    private static string Quoted(string text) => $"\"{System.Text.Json.JsonEncodedText.Encode(text, System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";

    private static void Line(StringBuilder text, int depth, string line, string? comment = null)
    {
        var written = new string(' ', depth * 2) + line;
        text.Append(comment is null ? written : $"{written.PadRight(CommentColumn)} // {comment}").Append('\n');
    }
}
