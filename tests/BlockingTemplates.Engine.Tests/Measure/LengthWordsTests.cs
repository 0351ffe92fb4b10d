using BlockingTemplates.Engine.Measure;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Measure;

public class LengthWordsTests
{
    [Theory]
    [InlineData(1480, "148.0 cm")]
    [InlineData(1480.4, "148.0 cm")]
    [InlineData(1480.5, "148.1 cm")]
    [InlineData(-1480.5, "-148.1 cm")]
    [InlineData(-0.4, "0.0 cm")]
    [InlineData(0, "0.0 cm")]
    [InlineData(-5, "-0.5 cm")]
    public void Centimetres_are_written_to_a_tenth(double millimetres, string words) =>
        Assert.Equal(words, LengthWords.Of(Length.FromMillimetres(millimetres), LengthUnit.Centimetres));

    [Theory]
    [InlineData(1480, "1480 mm")]
    [InlineData(0.5, "1 mm")]
    [InlineData(-0.5, "-1 mm")]
    [InlineData(-0.4, "0 mm")]
    public void Millimetres_are_written_whole(double millimetres, string words) =>
        Assert.Equal(words, LengthWords.Of(Length.FromMillimetres(millimetres), LengthUnit.Millimetres));

    [Theory]
    [InlineData(58.25, "58 1/4 in")]
    [InlineData(0.375, "3/8 in")]
    [InlineData(0, "0 in")]
    [InlineData(0.06, "0 in")]
    [InlineData(-0.06, "0 in")]
    [InlineData(0.0625, "1/8 in")]
    [InlineData(-0.0625, "-1/8 in")]
    [InlineData(2.9375, "3 in")]
    [InlineData(0.5, "1/2 in")]
    [InlineData(-1.25, "-1 1/4 in")]
    [InlineData(72, "72 in")]
    public void Inches_are_written_to_the_nearest_eighth_as_a_fraction(double inches, string words) =>
        Assert.Equal(words, LengthWords.Of(Length.FromInches(inches), LengthUnit.Inches));

    [Fact]
    public void The_unit_can_be_left_off() =>
        Assert.Equal(["1480", "148.0", "58 1/4"], new[] { LengthUnit.Millimetres, LengthUnit.Centimetres, LengthUnit.Inches }
            .Select(u => LengthWords.Number(Length.FromMillimetres(1480), u)));

    [Fact]
    public void What_is_written_reads_back_within_half_of_what_is_rounded_to() =>
        Gen.Select(Gen.Double[-25_000, 25_000], Gen.Enum<LengthUnit>()).Sample((millimetres, unit) =>
        {
            var length = Length.FromMillimetres(millimetres);
            var half = unit == LengthUnit.Inches ? 25.4 / 16 : 0.5;
            foreach (var words in new[] { LengthWords.Of(length, unit), LengthWords.Number(length, unit) })
            {
                Assert.True(LengthText.TryRead(words, unit, out var back, out var why), why);
                Assert.InRange(Math.Abs(back.Millimetres - millimetres), 0, half + 1e-9);
                Assert.Equal(words, words == LengthWords.Of(length, unit) ? LengthWords.Of(back, unit) : LengthWords.Number(back, unit));
            }
        });

    [Fact]
    public void Every_eighth_is_in_its_lowest_terms()
    {
        for (var eighths = -40; eighths <= 40; eighths++)
        {
            var words = LengthWords.Number(Length.FromInches(eighths / 8.0), LengthUnit.Inches);
            if (!words.Contains('/', StringComparison.Ordinal))
            {
                Assert.Equal(0, eighths % 8);
                continue;
            }

            var parts = words.Split(' ')[^1].TrimStart('-').Split('/').Select(int.Parse).ToArray();
            Assert.Equal(1, parts[0] % 2);
            Assert.Equal(Math.Abs(eighths) % 8, parts[0] * (8 / parts[1]));
        }
    }
}
