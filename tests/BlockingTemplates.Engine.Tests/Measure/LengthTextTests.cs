using System.Globalization;
using BlockingTemplates.Engine.Measure;
using CsCheck;

namespace BlockingTemplates.Engine.Tests.Measure;

public class LengthTextTests
{
    private static double Read(string text, LengthUnit unit = LengthUnit.Centimetres)
    {
        Assert.True(LengthText.TryRead(text, unit, out var length, out var why), why);
        Assert.Null(why);
        return length.Millimetres;
    }

    private static string Refused(string text, LengthUnit unit = LengthUnit.Centimetres)
    {
        Assert.False(LengthText.TryRead(text, unit, out var length, out var why), $"{text} was read as {length.Millimetres} mm");
        Assert.Equal(Length.Zero, length);
        Assert.NotNull(why);
        return why;
    }

    // Arithmetic from 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in (international yard and pound agreement, 1959).
    [Theory]
    [InlineData("36 1/2 in", 927.1)]
    [InlineData("2 5/8 in", 66.675)]
    [InlineData("1 yd 4 in", 1016)]
    [InlineData("72 in", 1828.8)]
    [InlineData("1 yd", 914.4)]
    [InlineData("1 foot", 304.8)]
    [InlineData("48 3/4 in", 1238.25)]
    [InlineData("48¾\"", 1238.25)]
    [InlineData("48 ¾ in", 1238.25)]
    [InlineData("48-3/4\"", 1238.25)]
    [InlineData("48-¾\"", 1238.25)]
    [InlineData("48.75 in", 1238.25)]
    [InlineData("4 ft 3/4 in", 1238.25)]
    [InlineData("4' 3/4\"", 1238.25)]
    [InlineData("4′ ¾″", 1238.25)]
    [InlineData("4’ ¾”", 1238.25)]
    [InlineData("4ft¾in", 1238.25)]
    [InlineData("48 3⁄4 in", 1238.25)]
    [InlineData("48\u00A03/4\u202Fin", 1238.25)]
    [InlineData("  48 3/4 in. ", 1238.25)]
    [InlineData("48 3/4''", 1238.25)]
    [InlineData("3'", 914.4)]
    [InlineData("3' 6\"", 1066.8)]
    [InlineData("3'6\"", 1066.8)]
    [InlineData("3'-6\"", 1066.8)]
    [InlineData("3'-6-1/2\"", 1079.5)]
    [InlineData("1 yd 1 ft 1/2 in", 1231.9)]
    [InlineData("2⅝ in", 66.675)]
    [InlineData("⅝ in", 15.875)]
    [InlineData("5/8 inch", 15.875)]
    [InlineData("3/2 in", 38.1)]
    [InlineData("36.5in", 927.1)]
    [InlineData(".5 in", 12.7)]
    [InlineData("36 INCHES", 914.4)]
    [InlineData("2 feet", 609.6)]
    [InlineData("2 yards", 1828.8)]
    [InlineData("1.24 m", 1240)]
    [InlineData("1.24m", 1240)]
    [InlineData("1 m 24 cm", 1240)]
    [InlineData("124 cm", 1240)]
    [InlineData("12½ cm", 125)]
    [InlineData("1240 mm", 1240)]
    [InlineData("1240 millimetres", 1240)]
    [InlineData("0 cm", 0)]
    [InlineData("-3 cm", -30)]
    [InlineData("- 3 cm", -30)]
    [InlineData("\u22123 cm", -30)]
    [InlineData("-1 1/2 in", -38.1)]
    [InlineData("-3' 6\"", -1066.8)]
    [InlineData("+3 cm", 30)]
    public void A_length_is_read_as_people_write_it(string text, double millimetres) =>
        Assert.Equal(millimetres, Read(text), 1e-9);

    [Theory]
    [InlineData(LengthUnit.Millimetres, 36.5)]
    [InlineData(LengthUnit.Centimetres, 365)]
    [InlineData(LengthUnit.Inches, 927.1)]
    public void A_text_without_a_unit_takes_the_files(LengthUnit unit, double millimetres)
    {
        Assert.Equal(millimetres, Read("36.5", unit), 1e-9);
        Assert.Equal(millimetres, Read("36 1/2", unit), 1e-9);
        Assert.Equal(millimetres, Read("36½", unit), 1e-9);
        Assert.Equal(millimetres, Read("73/2", unit), 1e-9);
    }

    // The Unicode Standard, names of U+00BC to U+00BE and U+2150 to U+215E.
    [Fact]
    public void Every_vulgar_fraction_is_worth_what_its_name_says()
    {
        (char Sign, int Over, int Under)[] all =
        [
            ('\u00BC', 1, 4), ('\u00BD', 1, 2), ('\u00BE', 3, 4), ('\u2150', 1, 7), ('\u2151', 1, 9), ('\u2152', 1, 10),
            ('\u2153', 1, 3), ('\u2154', 2, 3), ('\u2155', 1, 5), ('\u2156', 2, 5), ('\u2157', 3, 5), ('\u2158', 4, 5),
            ('\u2159', 1, 6), ('\u215A', 5, 6), ('\u215B', 1, 8), ('\u215C', 3, 8), ('\u215D', 5, 8), ('\u215E', 7, 8),
        ];
        foreach (var (sign, over, under) in all)
        {
            // The platform's own table of characters is the second way.
            Assert.Equal((double)over / under, CharUnicodeInfo.GetNumericValue(sign), 1e-6);
            Assert.Equal((double)over / under * 25.4, Read($"{sign} in"), 1e-12);
            Assert.Equal((7 + ((double)over / under)) * 25.4, Read($"7{sign} in"), 1e-12);
        }
    }

    [Theory]
    [InlineData("1,24 m")]
    [InlineData("1,250 mm")]
    [InlineData("1 m, 24 cm")]
    [InlineData("1\uFF0C24 m")]
    public void A_comma_is_refused_with_the_reason_and_never_guessed(string text)
    {
        var why = Refused(text);
        Assert.Contains("comma, which may mark decimals or thousands", why, StringComparison.Ordinal);
        Assert.Contains("point", why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("  \u00A0 ", "empty")]
    [InlineData("48 3", "two numbers side by side")]
    [InlineData("48 3 in", "two numbers side by side")]
    [InlineData("1 250 mm", "two numbers side by side")]
    [InlineData("48-50 cm", "two numbers side by side")]
    [InlineData("3/0 in", "divides by zero")]
    [InlineData("48 3/0 in", "divides by zero")]
    [InlineData("3/ in", "not two whole numbers")]
    [InlineData("1.5/2 in", "not two whole numbers")]
    [InlineData("48 1/2.5 in", "not two whole numbers")]
    [InlineData("48.5 1/2 in", "decimals and a fraction")]
    [InlineData("4.5½ in", "decimals and a fraction")]
    [InlineData("48 5/4 in", "fraction of 1 or more")]
    [InlineData("1 ft 10 cm", "mixes metric")]
    [InlineData("1'250 mm", "mixes metric")]
    [InlineData("4 in 1 ft", "greater unit to the smaller")]
    [InlineData("4 in 4 in", "greater unit to the smaller")]
    [InlineData("3.5' 6\"", "not whole")]
    [InlineData("3 1/2 ft 6 in", "not whole")]
    [InlineData("3' 6", "no unit")]
    [InlineData("3 ft -", "where a length cannot have it")]
    [InlineData("48 furlongs", "\"furlongs\"")]
    [InlineData("1e3 cm", "\"e\"")]
    [InlineData("NaN", "\"N\"")]
    [InlineData("Infinity", "\"I\"")]
    [InlineData("\u221E cm", "where a length cannot have it")]
    [InlineData("0x10 cm", "\"x\"")]
    [InlineData("1.2.3 cm", "point in the wrong place")]
    [InlineData("5. cm", "point in the wrong place")]
    [InlineData("cm", "where a length cannot have it")]
    [InlineData("-", "no number")]
    [InlineData("--3 cm", "where a length cannot have it")]
    [InlineData("3' -6\"", "where a length cannot have it")]
    [InlineData("\u0663 cm", "where a length cannot have it")]
    [InlineData("3 cm!", "where a length cannot have it")]
    [InlineData("3\0cm", "where a length cannot have it")]
    public void What_is_no_length_is_refused_with_what_is_wrong_and_what_to_write(string text, string reason)
    {
        var why = Refused(text);
        Assert.Contains(reason, why, StringComparison.Ordinal);
        Assert.Contains("Write", why, StringComparison.Ordinal);
        Assert.DoesNotContain('\0', why);
    }

    [Fact]
    public void More_than_64_characters_are_refused()
    {
        Assert.Equal(10, Read(new string(' ', 60) + "1 cm"), 1e-12);
        Assert.Contains("65 characters", Refused(new string(' ', 61) + "1 cm"), StringComparison.Ordinal);
        Assert.True(double.IsFinite(Read(new string('9', 64), LengthUnit.Inches)));
    }

    [Fact]
    public void Any_text_is_read_or_refused_and_none_throws() =>
        Gen.OneOf(
                Gen.String,
                Gen.String[Gen.Char["0123456789 ./-'\"inftcydm½¾⁄−,"], 0, 20])
            .Sample(text =>
            {
                var read = LengthText.TryRead(text, LengthUnit.Inches, out var length, out var why);
                Assert.Equal(read, why is null);
                Assert.True(double.IsFinite(length.Millimetres));
            }, iter: 20_000);

    [Fact]
    public void A_very_long_text_is_refused()
    {
        var text = new string('1', 50_000_000);
        Assert.False(LengthText.TryRead(text, LengthUnit.Inches, out _, out _));
    }

    [Fact]
    public void The_culture_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            german.NumberFormat.NumberDecimalSeparator = ",";
            german.NumberFormat.NumberGroupSeparator = ".";
            CultureInfo.CurrentCulture = german;
            Assert.Equal(1240, Read("1.24 m"), 1e-9);
            Assert.Equal("148.5 cm", LengthWords.Of(Length.FromCentimetres(148.5), LengthUnit.Centimetres));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Whole_number_and_fraction_are_worth_their_sum_in_every_unit() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 15], Gen.OneOf(Gen.Const("in"), Gen.Const("cm"), Gen.Const("mm"), Gen.Const("m"), Gen.Const("ft"), Gen.Const("yd")), Gen.Bool)
            .Sample((whole, sixteenths, unit, negative) =>
            {
                var size = unit switch { "in" => 25.4, "cm" => 10, "mm" => 1, "m" => 1000, "ft" => 304.8, _ => 914.4 };
                var text = $"{(negative ? "-" : "")}{whole}{(sixteenths > 0 ? $" {sixteenths}/16" : "")} {unit}";
                var expected = (whole + (sixteenths / 16.0)) * size * (negative ? -1 : 1);
                Assert.Equal(expected, Read(text), 1e-9 * (1 + Math.Abs(expected)));
            });
}
