using BlockingTemplates.Engine.Measure;
using CsCheck;
using Length = BlockingTemplates.Engine.Measure.Length;
using LengthUnit = BlockingTemplates.Engine.Measure.LengthUnit;

namespace BlockingTemplates.Reference.Tests.Measure;

public class LengthUnitsTests
{
    [Fact]
    public void Lengths_agree_with_an_outside_library_in_every_unit() =>
        Gen.Select(Gen.Decimal[0, 2000], Gen.Bool).Sample((number, negative) =>
        {
            var value = (double)Math.Round(number, 3) * (negative ? -1 : 1);
            var text = value.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
            (string Unit, double Millimetres)[] all =
            [
                ("mm", UnitsNet.Length.FromMillimeters(value).Millimeters),
                ("cm", UnitsNet.Length.FromCentimeters(value).Millimeters),
                ("m", UnitsNet.Length.FromMeters(value).Millimeters),
                ("in", UnitsNet.Length.FromInches(value).Millimeters),
                ("ft", UnitsNet.Length.FromFeet(value).Millimeters),
                ("yd", UnitsNet.Length.FromYards(value).Millimeters),
            ];
            foreach (var (unit, millimetres) in all)
            {
                Assert.True(LengthText.TryRead($"{text} {unit}", LengthUnit.Millimetres, out var length, out var why), why);
                Assert.Equal(millimetres, length.Millimetres, 1e-9 * (1 + Math.Abs(millimetres)));
                Assert.Equal(UnitsNet.Length.FromMillimeters(millimetres).Inches, length.Inches, 1e-9 * (1 + Math.Abs(millimetres)));
            }
        });

    // 1 in = 25.4 mm: international yard and pound agreement, 1 July 1959; 1 pt = 1/72 in: ISO 32000-1, 8.3.2.3.
    [Fact]
    public void The_inch_is_that_of_1959_and_the_point_a_72nd_of_it()
    {
        Assert.Equal(25.4, Length.FromInches(1).Millimetres);
        Assert.Equal(UnitsNet.Length.FromInches(1).Millimeters, Length.FromInches(1).Millimetres, 1e-12);
        Assert.Equal(UnitsNet.Length.FromDtpPoints(1000).Millimeters, Length.FromPoints(1000).Millimetres, 1e-9);
    }
}
