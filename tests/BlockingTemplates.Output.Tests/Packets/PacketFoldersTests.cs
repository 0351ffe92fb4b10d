using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Output.Tests.Packets;

// Packets whose files stand in folders of their own, one for each size.
public sealed class PacketFoldersTests : PacketTrial
{
    private List<string> All() => [.. Directory.EnumerateFileSystemEntries(Target, "*", SearchOption.AllDirectories).Select(p => Path.GetRelativePath(Target, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [Fact]
    public void Files_are_written_into_folders_and_those_no_more_are_removed_with_theirs()
    {
        Write(("sizes.csv", "1"), ("S/pins.csv", "1"), ("M/pins.csv", "1"), ("M/plan.json", "1"));
        Assert.Equal(["M", "M/pins.csv", "M/plan.json", "S", "S/pins.csv", "packet.txt", "sizes.csv"], All());
        var outcome = new PacketFolder(Target).Replace([File("sizes.csv", "2"), File("M/pins.csv", "2"), File("L/pins.csv", "2")]);
        Assert.Equal(["S/pins.csv", "M/plan.json"], outcome.Removed);
        Assert.Equal(["L", "L/pins.csv", "M", "M/pins.csv", "packet.txt", "sizes.csv"], All());
        Assert.Equal("2", Read("M/pins.csv"));
    }

    [Fact]
    public void A_folder_with_files_of_others_is_kept()
    {
        Write(("S/pins.csv", "1"));
        Put("S/photo.jpg", "mine");
        Write(("M/pins.csv", "1"));
        Assert.Equal(["M", "M/pins.csv", "S", "S/photo.jpg", "packet.txt"], All());
    }

    [Fact]
    public void A_file_in_the_place_of_a_folder_is_in_the_way()
    {
        Directory.CreateDirectory(Target);
        Put("S", "mine");
        var e = Assert.Throws<PacketConflictException>(() => Write(("S/pins.csv", "1")));
        Assert.Contains("S is no folder", e.Message, StringComparison.Ordinal);
        Assert.Equal(["S"], All());
    }

    [Fact]
    public void A_failure_at_any_move_leaves_all_folders_as_they_were()
    {
        Write(("a.txt", "1"), ("S/a.txt", "1"), ("M/a.txt", "1"));
        var before = All();
        for (var failing = 1; failing <= 7; failing++)
        {
            var moves = 0;
            var folder = new PacketFolder(Target, (from, to, over) =>
            {
                if (++moves == failing) throw new IOException("the disk is full");
                System.IO.File.Move(from, to, over);
            });
            Assert.Throws<IOException>(() => folder.Replace([File("a.txt", "2"), File("M/a.txt", "2"), File("L/a.txt", "2"), File("L/b.txt", "2")]));
            Assert.Equal(before, All());
            Assert.Equal(("1", "1", "1"), (Read("a.txt"), Read("S/a.txt"), Read("M/a.txt")));
        }
    }

    [Theory]
    [InlineData("../a.txt")]
    [InlineData("S/../a.txt")]
    [InlineData("S/T/a.txt")]
    [InlineData("/a.txt")]
    [InlineData("S/")]
    [InlineData(".hidden/a.txt")]
    public void Names_that_lead_elsewhere_are_refused(string name) =>
        Assert.Throws<ArgumentException>(() => new PacketFolder(Target).Replace([File(name, "1")]));
}
