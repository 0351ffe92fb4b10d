using BlockingTemplates.Engine.Measure;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Measure;

public class NearestNameTests
{
    private static readonly string[] Names = ["wingspan", "depth", "scallop", "seamClearance", "top", "left", "right", "size", "owned"];

    [Theory]
    [InlineData("wingspam", "wingspan")]
    [InlineData("WINGSPAN", "wingspan")]
    [InlineData("depht", "depth")]
    [InlineData("scalop", "scallop")]
    [InlineData("seam_clearance", "seamClearance")]
    [InlineData("seam", "seamClearance")]
    [InlineData("tpo", "top")]
    [InlineData("sizes", "size")]
    public void A_slip_finds_the_name_that_was_meant(string unknown, string meant) =>
        Assert.Equal(meant, NearestName.Of(unknown, Names));

    [Theory]
    [InlineData("colour")]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("zz")]
    public void What_is_near_nothing_finds_nothing(string unknown) => Assert.Null(NearestName.Of(unknown, Names));

    [Fact]
    public void A_very_long_name_finds_nothing() => Assert.Null(NearestName.Of(new string('a', 1_000_000), Names));

    [Fact]
    public void The_first_of_equally_near_names_is_taken() => Assert.Equal("bat", NearestName.Of("cat", ["bat", "hat"]));

    [Fact]
    public void The_nearest_has_the_least_distance_counted_slowly() =>
        Gen.Select(Gen.String[Gen.Char["abc"], 1, 6], Gen.String[Gen.Char["abc"], 1, 6].Array[1, 4]).Sample((unknown, known) =>
        {
            var near = known
                .Select((name, index) => (Name: name, index, Distance: Slow(unknown, name), Longer: Math.Max(unknown.Length, name.Length)))
                .Where(k => k.Distance < k.Longer
                    && (k.Distance <= Math.Max(1, k.Longer / 3) || (unknown.Length >= 3 && k.Name.StartsWith(unknown, StringComparison.Ordinal))))
                .OrderBy(k => k.Distance).ThenBy(k => k.index)
                .Select(k => k.Name)
                .FirstOrDefault();
            Assert.Equal(near, NearestName.Of(unknown, known));
        }, iter: 2000);

    // By the definition: the least over all ways to treat the last letters.
    private static int Slow(ReadOnlySpan<char> a, ReadOnlySpan<char> b)
    {
        if (a.IsEmpty || b.IsEmpty)
            return a.Length + b.Length;
        var least = Math.Min(Slow(a[..^1], b), Slow(a, b[..^1])) + 1;
        least = Math.Min(least, Slow(a[..^1], b[..^1]) + (a[^1] == b[^1] ? 0 : 1));
        return a.Length > 1 && b.Length > 1 && a[^1] == b[^2] && a[^2] == b[^1] ? Math.Min(least, Slow(a[..^2], b[..^2]) + 1) : least;
    }
}
