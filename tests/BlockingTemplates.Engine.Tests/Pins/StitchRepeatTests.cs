using BlockingTemplates.Engine.Pins;

namespace BlockingTemplates.Engine.Tests.Pins;

public class StitchRepeatTests
{
    public static TheoryData<double[], string> Repeats => new()
    {
        { [8, 8, 8], "every 8th stitch" },
        { [1, 1, 1, 1], "every stitch" },
        { [2], "every 2nd stitch" },
        { [6, 8, 8, 8, 8, 6], "every 8th stitch, near the tips every 6th" },
        { [3, 4, 8, 9, 8, 9, 8, 4, 3], "every 8th or 9th stitch, near the tips every 3rd or 4th" },
        { [21, 21, 21, 21, 11], "every 21st stitch, near the left tip every 11th" },
        { [4, 4, 12, 12, 12, 12, 12], "every 12th stitch, near the right tip every 4th" },
        { [3, 8, 8, 8, 8, 8, 5], "every 8th stitch, near the right tip every 3rd, near the left tip every 5th" },
        { [7, 7.5, 7.5, 7], "every 7th or 8th stitch" },
        { [113, 113], "every 113th stitch" },
        { [10, 10, 4, 10, 10], "every 4th to 10th stitch" },
    };

    [Theory]
    [MemberData(nameof(Repeats))]
    public void Gaps_are_told_as_a_maker_counts_them(double[] gaps, string words) =>
        Assert.Equal(words, StitchRepeat.Words(gaps, "stitch", ("right tip", "left tip")));

    [Fact]
    public void Corners_that_are_no_tips_are_told_as_corners() =>
        Assert.Equal("every 8th row, near both corners every 4th", StitchRepeat.Words([4, 8, 8, 8, 4], "row", ("lower left", "lower right")));
}
