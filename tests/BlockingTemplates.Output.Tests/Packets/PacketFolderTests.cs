using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Output.Tests.Packets;

public sealed class PacketFolderTests : PacketTrial
{
    [Fact]
    public void A_packet_is_written_into_a_folder_made_for_it_with_its_list()
    {
        var outcome = new PacketFolder(Target).Replace([File("guide-a4.pdf", "one"), File("pins.csv", "two")]);
        Assert.Equal([Path.Combine(Target, "guide-a4.pdf"), Path.Combine(Target, "pins.csv")], outcome.Written);
        Assert.Empty(outcome.Removed);
        AssertHolds(("guide-a4.pdf", "one"), ("pins.csv", "two"));

        // SHA-256 of "one", as sha256sum prints it.
        Assert.Contains("7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed  guide-a4.pdf", System.IO.File.ReadAllText(Path.Combine(Target, "packet.txt")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_run_replaces_what_the_first_wrote_and_removes_what_is_no_more()
    {
        Write(("a.txt", "1"), ("b.txt", "1"), ("c.txt", "1"));
        var outcome = new PacketFolder(Target).Replace([File("a.txt", "2"), File("d.txt", "2"), File("c.txt", "1")]);
        Assert.Equal(["b.txt"], outcome.Removed);
        AssertHolds(("a.txt", "2"), ("d.txt", "2"), ("c.txt", "1"));
    }

    [Fact]
    public void The_same_packet_twice_is_the_same_folder()
    {
        Write(("a.txt", "1"), ("b.txt", "1"));
        var list = System.IO.File.ReadAllText(Path.Combine(Target, "packet.txt"));
        Write(("a.txt", "1"), ("b.txt", "1"));
        AssertHolds(("a.txt", "1"), ("b.txt", "1"));
        Assert.Equal(list, System.IO.File.ReadAllText(Path.Combine(Target, "packet.txt")));
    }

    [Fact]
    public void Files_of_others_are_never_overwritten_and_all_are_named_at_once()
    {
        Directory.CreateDirectory(Target);
        Put("a.txt", "mine");
        Put("b.txt", "mine too");
        Directory.CreateDirectory(Path.Combine(Target, "c.txt"));
        var e = Assert.Throws<PacketConflictException>(() => Write(("a.txt", "1"), ("b.txt", "1"), ("c.txt", "1"), ("d.txt", "1")));
        Assert.Equal(["a.txt", "b.txt", "c.txt"], e.Files);
        Assert.Contains("a.txt was not written by this tool", e.Message, StringComparison.Ordinal);
        Assert.Contains("c.txt is a folder", e.Message, StringComparison.Ordinal);
        Assert.Contains("Move or rename them, or choose another folder.", e.Message, StringComparison.Ordinal);
        Assert.Equal(["a.txt", "b.txt", "c.txt"], Names());
        Assert.Equal("mine", Read("a.txt"));
    }

    [Fact]
    public void A_file_changed_by_hand_is_not_overwritten()
    {
        Write(("a.txt", "1"), ("b.txt", "1"));
        Put("b.txt", "my notes");
        var e = Assert.Throws<PacketConflictException>(() => Write(("a.txt", "2"), ("b.txt", "2")));
        Assert.Equal(["b.txt"], e.Files);
        Assert.Contains("b.txt was changed since this tool wrote it", e.Message, StringComparison.Ordinal);
        Assert.Equal(("1", "my notes"), (Read("a.txt"), Read("b.txt")));
        System.IO.File.Delete(Path.Combine(Target, "b.txt"));
        Write(("a.txt", "2"), ("b.txt", "2"));
        AssertHolds(("a.txt", "2"), ("b.txt", "2"));
    }

    [Fact]
    public void A_file_no_longer_made_but_changed_by_hand_is_left_alone_and_other_files_always()
    {
        Write(("a.txt", "1"), ("b.txt", "1"));
        Put("b.txt", "my notes");
        Put("photo.jpg", "mine");
        var outcome = new PacketFolder(Target).Replace([File("a.txt", "2")]);
        Assert.Equal(["b.txt"], outcome.LeftAlone);
        Assert.Empty(outcome.Removed);
        Assert.Equal(["a.txt", "b.txt", "packet.txt", "photo.jpg"], Names());
        Assert.Equal(("my notes", "mine"), (Read("b.txt"), Read("photo.jpg")));
    }

    [Theory]
    [InlineData("my own list")]
    [InlineData("")]
    [InlineData("# Files of this packet. A new run replaces those that still are as listed, and no others.\nzz  a.txt\n")]
    [InlineData("# Files of this packet. A new run replaces those that still are as listed, and no others.\n7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed  ../../victim\n")]
    public void A_list_that_is_not_ours_is_not_trusted(string list)
    {
        Put("../../victim", "one");
        Directory.CreateDirectory(Target);
        Put("packet.txt", list);
        var e = Assert.Throws<PacketConflictException>(() => Write(("a.txt", "1")));
        Assert.Equal(["packet.txt"], e.Files);
        Assert.Equal(list, Read("packet.txt"));
        Assert.True(System.IO.File.Exists(Path.Combine(Root, "victim")));
    }

    [Fact]
    public void Wrong_names_are_the_programmers_mistake()
    {
        foreach (var name in new[] { "../x", "a/b/c", "", "packet.txt", "PACKET.TXT", ".hidden", "con" })
        {
            Assert.Throws<ArgumentException>(() => Write((name, "1")));
        }

        Assert.Throws<ArgumentException>(() => Write(("a.txt", "1"), ("A.txt", "2")));
        Assert.Throws<ArgumentException>(() => Write());
        Assert.False(Directory.Exists(Target));
    }
}
