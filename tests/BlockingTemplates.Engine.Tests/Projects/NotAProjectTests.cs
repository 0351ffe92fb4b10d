using System.Text;
using BlockingTemplates.Engine.Projects;

namespace BlockingTemplates.Engine.Tests.Projects;

public class NotAProjectTests
{
    private static (int? Line, string What, string Do) Problem(byte[] bytes)
    {
        var reading = Reading.Reader.Read(bytes);
        Assert.Null(reading.Project);
        var problem = Assert.Single(reading.Findings.Problems);
        Assert.Equal("", problem.Path);
        Reading.AssertSaysAll(problem);
        return (problem.Line, problem.What, problem.Do);
    }

    private static (int? Line, string What, string Do) Problem(string text) => Problem(Encoding.UTF8.GetBytes(text));

    [Theory]
    [InlineData("")]
    [InlineData(" \r\n\t \n")]
    [InlineData("\uFEFF")]
    public void An_empty_file_is_said_to_be_empty(string text)
    {
        var (line, what, @do) = Problem(text);
        Assert.Null(line);
        Assert.Equal("The file is empty.", what);
        Assert.Contains("`new`", @do, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_comments_alone_says_nothing()
    {
        var (_, what, @do) = Problem("// later\n/* much\nlater */\n");
        Assert.Contains("anything but comments", what, StringComparison.Ordinal);
        Assert.Contains("`new`", @do, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("null", "still blank")]
    [InlineData("12", "Here stands 12")]
    [InlineData("[]", "Here stands [ ... ]")]
    [InlineData("\"x\"", "Here stands \"x\"")]
    public void Json_that_is_no_object_is_no_project(string text, string what) =>
        Assert.Contains(what, Problem(text).What, StringComparison.Ordinal);

    [Theory]
    [InlineData("{\n  \"piece\": {\n", 3, 1, "ends too early", "Close what is open")]
    [InlineData("{ \"title\": \"abc", 1, 0, "", "")]
    [InlineData("{\n\n  'title': 1 }", 3, 3, "no straight double quote", "straight double quotes")]
    [InlineData("{\n  \u201Ctitle\u201D: 1 }", 2, 3, "no straight double quote", "straight double quotes")]
    [InlineData("{\n  \"wingspan\": 48 3/4 }", 2, 18, "after a number", "in double quotes, such as \"48 3/4 in\"")]
    [InlineData("{\n  \"wingspan\": 48\" }", 2, 17, "after a number", "in double quotes")]
    [InlineData("{\n  \"wingspan\": 48¾ }", 2, 17, "after a number", "in double quotes")]
    [InlineData("{\n  \"wingspan\": 148cm }", 2, 18, "after a number", "in double quotes")]
    [InlineData("{\n  \"wingspan\": 1,24 }", 2, 17, "where a name should begin", "Write decimals with a point")]
    [InlineData("{\n  \"a\": \"48\"\" }", 2, 12, "a quote stands", "comma between two entries")]
    [InlineData("{\n  \"a\": 1\n  \"b\": 2 }", 3, 3, "a comma is missing", "comma between two entries")]
    [InlineData("{\n  \"a\": \"1\"\n  \"b\": 2 }", 3, 3, "a comma is missing", "comma between two entries")]
    [InlineData("{\n  \"a\": [1, 2}\n", 2, 13, "does not close what was opened last", "Close { with }")]
    [InlineData("{\n  \"a\": }\n", 2, 8, "comes too early", "give every name a value")]
    [InlineData("{\n  \"a\": NaN }", 2, 8, "a word that is no value", "NaN and Infinity are no lengths")]
    [InlineData("{\n  \"a\": Infinity }", 2, 8, "a word that is no value", "NaN and Infinity are no lengths")]
    [InlineData("{\n  \"a\": 1,, }", 2, 10, "a comma with nothing before it", "Take it out")]
    [InlineData("{\n  \"a\": 1 }\n}", 3, 1, "the project ends above", "Take out what follows")]
    [InlineData("{\n  \"a\": \"x\ny\" }", 2, 10, "the line ends inside a text", "Close the text")]
    [InlineData("{ /* never closed", 1, 0, "", "")]
    [InlineData("{\n  // é é é\n  \"é\": x }", 3, 8, "where it cannot", "Look there")]
    [InlineData("{\n  /* a\n b */ \"a\": x }", 3, 12, "where it cannot", "Look there")]
    public void Where_a_file_stops_being_json_is_said_in_plain_words_with_line_and_column(string text, int line, int column, string what, string @do)
    {
        var found = Problem(text);
        Assert.Equal(line, found.Line);
        if (column > 0 && what.Length > 0)
            Assert.StartsWith($"Line {line}, column {column}: ", found.What, StringComparison.Ordinal);
        Assert.Contains(what, found.What, StringComparison.Ordinal);
        Assert.Contains(@do, found.Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_that_are_no_utf8_are_shown_with_line_and_column()
    {
        var (line, what, @do) = Problem([.. "{\n  \"title\": \"ü"u8, 0xFC, .. "\" }"u8]);
        Assert.Equal(2, line);
        Assert.Equal("The file is not UTF-8 text: line 2, column 14 has the byte FC.", what);
        Assert.Contains("UTF-8", @do, StringComparison.Ordinal);
        Assert.Contains("UTF-16", Problem(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("{}")).ToArray()).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_order_mark_does_no_harm() => Reading.Clean("\uFEFF" + Reading.Triangle());

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{\"a\":", "}")]
    public void Brackets_too_deep_are_a_problem_with_its_line(string open, string close)
    {
        foreach (var depth in new[] { 33, 70, 5000, 200_000 })
        {
            var text = "{ \"notes\":\n" + string.Concat(Enumerable.Repeat(open, depth)) + "1" + string.Concat(Enumerable.Repeat(close, depth)) + " }";
            var problem = Reading.Single(text);
            Assert.Equal(2, problem.Line);
            Assert.StartsWith("notes", problem.Path, StringComparison.Ordinal);
            Assert.Contains("more than 32 deep", problem.What, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void More_than_five_megabytes_are_refused_unread()
    {
        Assert.Null(ProjectReader.TooLong(5_000_000));
        var problem = ProjectReader.TooLong(5_000_001)!;
        Assert.Equal("", problem.Path);
        Assert.Contains("5000001 bytes", problem.What, StringComparison.Ordinal);
        Assert.Contains("not read", problem.What, StringComparison.Ordinal);
        Reading.AssertSaysAll(problem);

        var text = Reading.Triangle();
        Reading.Clean(text.PadRight(5_000_000));
        var reading = Reading.Reader.Read(Encoding.UTF8.GetBytes(text.PadRight(5_000_001)));
        Assert.Null(reading.Project);
        Assert.Equal(problem, Assert.Single(reading.Findings.Problems));
    }

    [Fact]
    public void A_name_that_stands_twice_is_shown_with_both_lines()
    {
        var problem = Reading.Single("{ \"piece\": { \"shape\": \"triangle\",\n \"finished\": { \"wingspan\": 148,\n\"depth\": 74,\n\"wingspan\": 149 } } }".Replace("14", "1400", StringComparison.Ordinal));
        Assert.Equal("piece.finished.wingspan", problem.Path);
        Assert.Equal(4, problem.Line);
        Assert.Contains("a second time; the first is in line 2", problem.What, StringComparison.Ordinal);
        Assert.Equal("Keep one of them.", problem.Do);
    }

    [Fact]
    public void Half_a_character_is_a_problem()
    {
        Assert.Contains("half a character", Problem2("{ \"title\": \"\\uD800\" }").What, StringComparison.Ordinal);
        Assert.Contains("half a character", Problem2("{ \"\\uDFFF\": 1 }").What, StringComparison.Ordinal);

        static Engine.Measure.Problem Problem2(string text) => Reading.Of(text).Findings.Problems[0];
    }

    [Fact]
    public void A_file_that_is_no_project_at_all_does_not_fill_the_screen()
    {
        var text = "{" + string.Join(",\n", Enumerable.Range(0, 300_000).Select(i => $"\"x{i}\":1")) + "}";
        var problems = Reading.Of(text).Findings.Problems;
        Assert.Equal(1001, problems.Count);
        // 299,000 of the unknown names and the missing piece are not listed.
        Assert.Equal("There are 299001 more problems, not listed.", problems[^1].What);
        Assert.Equal(777, problems[776].Line);
    }
}
