using System.Text;
using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Output.Tests.Packets;

public sealed class PacketFolderTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("packet-").FullName;

    private string Target => Path.Combine(_root, "out", "demo");

    public void Dispose() => Directory.Delete(_root, recursive: true);

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
        Assert.True(System.IO.File.Exists(Path.Combine(_root, "victim")));
    }

    [Fact]
    public void A_failure_at_any_move_leaves_the_folder_as_it_was()
    {
        Write(("a.txt", "1"), ("b.txt", "1"), ("c.txt", "1"));
        Put("photo.jpg", "mine");
        var list = Read("packet.txt");
        var moves = 0;
        for (var failing = 1; ; failing++)
        {
            moves = 0;
            var folder = new PacketFolder(Target, (from, to, over) =>
            {
                if (++moves == failing) throw new IOException("the disk is full");
                System.IO.File.Move(from, to, over);
            });
            if (failing > 6)
            {
                folder.Replace([File("a.txt", "2"), File("b.txt", "2"), File("d.txt", "2")]);
                break;
            }

            var e = Assert.Throws<IOException>(() => folder.Replace([File("a.txt", "2"), File("b.txt", "2"), File("d.txt", "2")]));
            Assert.Equal("the disk is full", e.Message);
            Assert.Equal(["a.txt", "b.txt", "c.txt", "packet.txt", "photo.jpg"], Names());
            Assert.Equal(("1", "1", "1", "mine", list), (Read("a.txt"), Read("b.txt"), Read("c.txt"), Read("photo.jpg"), Read("packet.txt")));
        }

        Assert.Equal(6, moves); // the list of both, c away, a, b and d in, the list
        Assert.Equal(["a.txt", "b.txt", "d.txt", "packet.txt", "photo.jpg"], Names());
    }

    [Fact]
    public void A_failure_in_a_new_folder_leaves_no_folder()
    {
        var folder = new PacketFolder(Target, (_, _, _) => throw new IOException("the disk is full"));
        Assert.Throws<IOException>(() => folder.Replace([File("a.txt", "1")]));
        Assert.False(Directory.Exists(Path.Combine(_root, "out")));
        Assert.True(Directory.Exists(_root));
    }

    [Fact]
    public void A_run_cut_off_half_way_is_made_good_by_the_next()
    {
        // As when the machine stops: nothing is put back, nothing cleared away.
        var files = new[] { File("a.txt", "2"), File("b.txt", "2"), File("d.txt", "2") };
        for (var moves = 1; moves <= 6; moves++)
        {
            if (Directory.Exists(Target)) Directory.Delete(Target, recursive: true);
            Write(("a.txt", "1"), ("b.txt", "1"), ("c.txt", "1"));
            var kept = Path.Combine(_root, $"kept{moves}");
            var count = 0;
            var folder = new PacketFolder(Target, (from, to, over) =>
            {
                System.IO.File.Move(from, to, over);
                if (++count == moves) Copy(Target, kept);
            });
            folder.Replace(files);
            Directory.Delete(Target, recursive: true);
            Directory.Move(kept, Target);

            new PacketFolder(Target).Replace(files);
            AssertHolds(("a.txt", "2"), ("b.txt", "2"), ("d.txt", "2"));
        }
    }

    [Fact]
    public void Cancelling_before_the_files_are_ready_changes_nothing()
    {
        Write(("a.txt", "1"));
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(() => new PacketFolder(Target).Replace([File("a.txt", "2")], cancelled.Token));
        AssertHolds(("a.txt", "1"));

        // While a large file is being written.
        using var soon = new CancellationTokenSource();
        var large = new PacketFile("large.bin", new byte[200 << 20]);
        soon.CancelAfter(TimeSpan.FromMilliseconds(10));
        Assert.Throws<OperationCanceledException>(() => new PacketFolder(Target).Replace([File("a.txt", "2"), large], soon.Token));
        AssertHolds(("a.txt", "1"));
    }

    [Fact]
    public void Once_the_moves_began_cancelling_comes_too_late()
    {
        using var source = new CancellationTokenSource();
        var folder = new PacketFolder(Target, (from, to, over) =>
        {
            source.Cancel();
            System.IO.File.Move(from, to, over);
        });
        folder.Replace([File("a.txt", "1"), File("b.txt", "1")], source.Token);
        AssertHolds(("a.txt", "1"), ("b.txt", "1"));
    }

    [Fact]
    public void Two_runs_do_not_write_into_one_folder_at_once()
    {
        var second = new PacketFolder(Target);
        IOException? refused = null;
        var first = new PacketFolder(Target, (from, to, over) =>
        {
            refused ??= Assert.Throws<IOException>(() => second.Replace([File("b.txt", "2")]));
            System.IO.File.Move(from, to, over);
        });
        first.Replace([File("a.txt", "1")]);
        Assert.Contains("Another run is writing", refused!.Message, StringComparison.Ordinal);
        AssertHolds(("a.txt", "1"));
        second.Replace([File("b.txt", "2")]);
        AssertHolds(("b.txt", "2"));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_an_io_failure()
    {
        Put("../../out", "a file where the folder should be");
        Assert.ThrowsAny<IOException>(() => Write(("a.txt", "1")));
        Assert.Equal("a file where the folder should be", System.IO.File.ReadAllText(Path.Combine(_root, "out")));
    }

    [Fact]
    public void Wrong_names_are_the_programmers_mistake()
    {
        foreach (var name in new[] { "../x", "a/b", "", "packet.txt", "PACKET.TXT", ".hidden", "con" })
        {
            Assert.Throws<ArgumentException>(() => Write((name, "1")));
        }

        Assert.Throws<ArgumentException>(() => Write(("a.txt", "1"), ("A.txt", "2")));
        Assert.Throws<ArgumentException>(() => Write());
        Assert.False(Directory.Exists(Target));
    }

    private static PacketFile File(string name, string content) => new(name, Encoding.UTF8.GetBytes(content));

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) != "lock"))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            System.IO.File.Copy(file, target);
        }
    }

    private void Write(params (string Name, string Content)[] files) => new PacketFolder(Target).Replace([.. files.Select(f => File(f.Name, f.Content))]);

    private void Put(string name, string content) => System.IO.File.WriteAllText(Path.GetFullPath(Path.Combine(Target, name)), content);

    private string Read(string name) => System.IO.File.ReadAllText(Path.Combine(Target, name));

    private List<string> Names() => [.. Directory.EnumerateFileSystemEntries(Target).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];

    /// <summary>The folder holds these files, its list, and nothing else, hidden or not.</summary>
    private void AssertHolds(params (string Name, string Content)[] files)
    {
        Assert.Equal(files.Select(f => f.Name).Append("packet.txt").Order(StringComparer.Ordinal), Names());
        Assert.All(files, f => Assert.Equal(f.Content, Read(f.Name)));
        Assert.Equal(files.Select(f => f.Name), System.IO.File.ReadAllLines(Path.Combine(Target, "packet.txt")).Skip(1).Select(l => l[66..]));
    }
}
