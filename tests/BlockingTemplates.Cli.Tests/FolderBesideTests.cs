namespace BlockingTemplates.Cli.Tests;

public sealed class FolderBesideTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("beside").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_plain_name_gives_the_file_in_the_folder()
    {
        File.WriteAllText(Path.Combine(_root, "a.svg"), "<svg/>");
        Assert.Equal("<svg/>"u8.ToArray(), new FolderBeside(_root).Read("a.svg").Bytes);
    }

    [Theory]
    [InlineData("../secret.svg")]
    [InlineData("inner/../../secret.svg")]
    [InlineData("inner")]
    [InlineData("missing.svg")]
    [InlineData("..")]
    public void Nothing_else_is_read(string name)
    {
        var folder = Directory.CreateDirectory(Path.Combine(_root, "project"));
        folder.CreateSubdirectory("inner");
        File.WriteAllText(Path.Combine(_root, "secret.svg"), "secret");
        var file = new FolderBeside(folder.FullName).Read(name);
        Assert.Null(file.Bytes);
        Assert.EndsWith(".", file.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_is_not_followed_and_a_large_file_not_read()
    {
        File.WriteAllText(Path.Combine(_root, "secret.svg"), "secret");
        File.CreateSymbolicLink(Path.Combine(_root, "link.svg"), Path.Combine(_root, "secret.svg"));
        Assert.Null(new FolderBeside(_root).Read("link.svg").Bytes);
        using (var large = File.Create(Path.Combine(_root, "large.svg")))
            large.SetLength(5_000_001);
        Assert.Contains("more than", new FolderBeside(_root).Read("large.svg").Why, StringComparison.Ordinal);
    }
}
