using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Fuzz;

/// <summary>The reading of project files.</summary>
internal static class ReaderTarget
{
    private static readonly ProjectReader Reader = new(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)]);

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static FuzzTarget Create() => new("reader", Seeds(), Words(), 6000, 3, bytes => Read(bytes));

    /// <summary>What is read of a file, once it keeps the rules: a project or problems, each with words that can be shown on a line.</summary>
    public static ProjectReading Read(byte[] bytes)
    {
        var reading = Reader.Read(bytes);
        if (reading.Project is null && reading.Findings.Problems.Count == 0)
            throw new InvalidOperationException("Neither a project nor a problem.");
        foreach (var problem in reading.Findings.Problems)
        {
            if (problem.What.Length == 0 || problem.Do.Length == 0 || problem.Line is <= 0)
                throw new InvalidOperationException($"A problem without words or line: {problem}");
            if ((problem.What + problem.Do + problem.Path).Any(char.IsControl))
                throw new InvalidOperationException($"A problem with a control character: {problem}");
        }

        return reading;
    }

    public static IReadOnlyList<byte[]> Seeds() =>
    [
        .. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples")).Order(StringComparer.Ordinal).Select(File.ReadAllBytes),
        .. PieceKinds.All.Select(k => Encoding.UTF8.GetBytes(BlankProject.For(k, default))),
        "{\"format\":1,\"units\":\"cm\",\"piece\":{\"shape\":\"rectangle\",\"finished\":{\"width\":30,\"length\":40}},\"mats\":{\"turns\":\"free\",\"floor\":[90,120]},\"sheets\":{\"half\":true,\"all\":true}}"u8.ToArray(),
    ];

    /// <summary>Every name and text of the seeds, and what trips readers of JSON.</summary>
    public static IReadOnlyList<byte[]> Words() =>
    [
        .. Seeds().SelectMany(s => Regex.Matches(Encoding.UTF8.GetString(s), "\"[^\"\\\\\n]{0,30}\"").Select(m => m.Value)).Distinct()
            .Concat(["{", "}", "[", "]", "\"", ":", ",", "null", "true", "false", "0", "-1", "1e999", "1e-9", "0.0000001", "999999999999", "//", "/*", "*/", "\\uD800", "\\u0000", "\n", "NaN", "[[", "{{", "\uFEFF", "\"free\"", "\"floor\":", "\"half\":true"])
            .Select(Encoding.UTF8.GetBytes),
    ];
}
