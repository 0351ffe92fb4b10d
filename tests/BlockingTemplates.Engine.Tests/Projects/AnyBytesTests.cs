using System.Text;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine.Tests.Projects;

public class AnyBytesTests
{
    private const int Seed = 20250101;
    private static readonly string[] Pieces = ["{", "}", "[", "]", "\"", ":", ",", "null", "true", "1e999", "-1", "\"48 3/4 in\"", "//", "/*", "\\uD800", "\n", "\u00BE", "NaN", "0.0000001", "\"edges\":", "\"piece\":", "[[", "{{"];

    // Ten thousand files: examples with bytes changed, cut out, doubled, swapped or put in, and plain noise.
    [Fact]
    public void Any_bytes_give_a_project_or_problems_and_never_throw_or_hang()
    {
        var random = new Random(Seed);
        var seeds = Directory.GetFiles(Path.Combine(Reading.Shared, "examples")).Order(StringComparer.Ordinal).Select(File.ReadAllBytes)
            .Concat(PieceKinds.All.Select(k => Encoding.UTF8.GetBytes(BlankProject.For(k, default))))
            .ToArray();
        var clean = 0;
        for (var i = 0; i < 10_000; i++)
        {
            var bytes = i % 10 == 0 ? Noise(random) : Mutated(random, seeds[i % seeds.Length]);
            var reading = Reading.Reader.Read(bytes);
            // The problems of a file in several sizes stand with its sizes.
            Assert.True(reading.Project is not null || reading.Findings.Problems.Count > 0 || reading.Sizes is [{ Findings.Problems.Count: > 0 }, ..]);
            foreach (var problem in reading.Findings.Problems)
            {
                Assert.NotEmpty(problem.What);
                Assert.NotEmpty(problem.Do);
                Assert.True(problem.Line is null or > 0);
                Assert.DoesNotContain(problem.What + problem.Do + problem.Path, char.IsControl);
                if (reading.Project is not null && problem.Path.Length < 80 && problem.Line is { } line)
                    Assert.True(reading.Lines.LineOf(problem.Path) is null or > 0, $"{line}");
            }

            clean += reading.Findings.IsClean ? 1 : 0;
        }

        Assert.InRange(clean, 1, 9000);
    }

    [Fact]
    public void The_same_bytes_give_the_same_reading()
    {
        var random = new Random(Seed);
        var example = File.ReadAllBytes(Path.Combine(Reading.Shared, "examples", "crescent-outline.jsonc"));
        for (var i = 0; i < 200; i++)
        {
            var bytes = Mutated(random, example);
            Assert.Equal(Reading.Reader.Read(bytes).Findings.Problems, Reading.Reader.Read(bytes).Findings.Problems);
        }
    }

    [Theory]
    [InlineData("[1,", 1_600_000)]
    [InlineData("{\"a\":[", 700_000)]
    [InlineData("[", 4_900_000)]
    [InlineData("\"\\u0041", 700_000)]
    [InlineData("//", 2_400_000)]
    [InlineData("1", 4_900_000)]
    [InlineData(" ", 4_900_000)]
    public void Five_megabytes_of_nonsense_are_read_to_the_end(string piece, int times)
    {
        var bytes = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(piece, times)));
        Assert.NotEmpty(Reading.Reader.Read(bytes).Findings.Problems);
    }

    [Fact]
    public void Five_megabytes_of_points_are_read_to_the_end()
    {
        var edges = string.Join(",", Enumerable.Range(0, 40).Select(_ => $"{{\"points\":[{string.Join(",", Enumerable.Repeat("[123.4,56.7]", 9_500))}]}}"));
        var text = Reading.Outline($"\"corners\": [{string.Join(",", Enumerable.Repeat("[0,0]", 40))}], \"edges\": [{edges}]");
        Assert.InRange(text.Length, 4_900_000, 5_000_000);
        Reading.Clean(text);
    }

    private static byte[] Noise(Random random)
    {
        var text = new StringBuilder();
        for (var i = random.Next(60); i > 0; i--)
            text.Append(random.Next(4) == 0 ? ((char)random.Next(32, 0x3000)).ToString() : Pieces[random.Next(Pieces.Length)]);
        var bytes = Encoding.UTF8.GetBytes(text.ToString());
        if (random.Next(3) == 0)
            random.NextBytes(bytes);
        return bytes;
    }

    private static byte[] Mutated(Random random, byte[] from)
    {
        var bytes = from.ToList();
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            var at = random.Next(bytes.Count);
            var length = Math.Min(random.Next(1, 30), bytes.Count - at);
            switch (random.Next(6))
            {
                case 0:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 1:
                    bytes.RemoveRange(at, length);
                    break;
                case 2:
                    bytes.InsertRange(at, bytes.GetRange(at, length));
                    break;
                case 3:
                    bytes.InsertRange(at, Encoding.UTF8.GetBytes(Pieces[random.Next(Pieces.Length)]));
                    break;
                case 4:
                    bytes[at] = (byte)"0123456789-eE.\",:{}[]"[random.Next(21)];
                    break;
                default:
                    bytes.RemoveRange(at, bytes.Count - at);
                    break;
            }

            if (bytes.Count == 0)
                break;
        }

        return [.. bytes];
    }
}
