using System.Text;
using BlockingTemplates.Output.Packets;
using CsCheck;

namespace BlockingTemplates.Output.Tests.Packets;

public class SafeFileNameTests
{
    [Theory]
    [InlineData("Lace triangle (invented example)", "Lace-triangle-invented-example")]
    [InlineData("guide-a4.pdf", "guide-a4.pdf")]
    [InlineData("under_score", "under_score")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("C:\\temp\\x", "C-temp-x")]
    [InlineData("3/4 shawl", "3-4-shawl")]
    [InlineData(".hidden", "hidden")]
    [InlineData("dots...", "dots")]
    [InlineData("a <b> & \"c\" | d?*", "a-b-c-d")]
    [InlineData("Größe é", "Größe-é")]
    [InlineData("שלום 😀", "שלום")]
    [InlineData("हिन्दी", "हिन्दी")]
    [InlineData("tab\tline\nend\0", "tab-line-end")]
    [InlineData("\u202Egpj.exe", "gpj.exe")]
    [InlineData("", "untitled")]
    [InlineData("  ", "untitled")]
    [InlineData("...", "untitled")]
    [InlineData("😀", "untitled")]
    [InlineData("con", "_con")]
    [InlineData("CON.txt", "_CON.txt")]
    [InlineData("nul.tar.gz", "_nul.tar.gz")]
    [InlineData("Com7", "_Com7")]
    [InlineData("lpt1.x", "_lpt1.x")]
    [InlineData("lpt¹.x", "lpt.x")]
    [InlineData("CONIN$", "_CONIN")]
    [InlineData("console", "console")]
    public void Titles_become_plain_file_names(string title, string name)
    {
        Assert.Equal(name, SafeFileName.From(title));
        Assert.True(SafeFileName.IsSafe(name));
    }

    [Fact]
    public void Long_titles_are_cut()
    {
        Assert.Equal(80, SafeFileName.From(new string('a', 200)).Length);
        Assert.Equal(80, SafeFileName.From("con." + new string('a', 200)).Length);
        Assert.InRange(Encoding.UTF8.GetByteCount(SafeFileName.From(string.Concat(Enumerable.Repeat("\U00020000", 200)))), 100, 240); // a letter of four bytes
    }

    [Fact]
    public void Any_title_gives_a_safe_name_that_stays_as_it_is() =>
        Gen.String.Sample(
            title =>
            {
                var name = SafeFileName.From(title);
                Assert.InRange(name.Length, 1, 80);
                Assert.True(name.All(c => char.IsLetterOrDigit(c) || char.IsSurrogate(c) || c is '-' or '_' or '.' || char.GetUnicodeCategory(c) is System.Globalization.UnicodeCategory.NonSpacingMark or System.Globalization.UnicodeCategory.SpacingCombiningMark), name);
                Assert.True(name[0] is not ('.' or '-') && name[^1] is not ('.' or '-'), name);
                Assert.Equal(name, SafeFileName.From(name));
            },
            iter: 2000,
            seed: "0000KWc4nUb2");

    [Theory]
    [InlineData("")]
    [InlineData("a/b")]
    [InlineData("..")]
    [InlineData("a b")]
    [InlineData("aux")]
    public void Other_names_are_not_safe(string name) => Assert.False(SafeFileName.IsSafe(name));
}
