using static BlockingTemplates.Engine.Tests.Projects.Files.Drawn;

namespace BlockingTemplates.Engine.Tests.Projects.Files;

public class PointsFromCsvTests
{
    [Theory]
    [InlineData("x mm,y mm\n0,0\n100,0\n100,50\n0,50\n")]
    [InlineData("x (cm);y (cm)\r\n0;0\r\n10;0\r\n10;5\r\n0;5\r\n0;0\r\n")]
    [InlineData("\"X cm\"\t\"Y cm\"\n0\t5\n\n10\t5\n10.0\t0\n0\t0\n")]
    public void Points_are_read_from_csv_with_the_unit_in_the_head(string csv)
    {
        var outline = Read(csv, name: "a.csv");
        Near(5000, outline.SignedArea());
        Assert.Equal(4, outline.Edges.Count);
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("x,y\n0,0\n", "does not name x and y with one unit")]
    [InlineData("x cm,y mm\n0,0\n", "does not name x and y with one unit")]
    [InlineData("x cm,y cm\n0,0\n1,0,5\n", "Line 3 of the file is no point")]
    [InlineData("x cm;y cm\n0;0\n1,5;0\n", "Line 3 of the file is no point")]
    [InlineData("x cm,y cm\n0,0\n1,NaN\n", "Line 3 of the file is no point")]
    [InlineData("x cm,y cm\n0,0\n1,0\n", "fewer than three points")]
    public void Wrong_points_are_refused(string csv, string what) => Assert.Contains(what, Refused(csv, name: "a.csv").What, StringComparison.Ordinal);
}
