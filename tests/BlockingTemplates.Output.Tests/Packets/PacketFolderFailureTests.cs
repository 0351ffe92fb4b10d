using System.Buffers;
using BlockingTemplates.Output.Packets;

namespace BlockingTemplates.Output.Tests.Packets;

public sealed class PacketFolderFailureTests : PacketTrial
{
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
        Assert.False(Directory.Exists(Path.Combine(Root, "out")));
        Assert.True(Directory.Exists(Root));
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
            var kept = Path.Combine(Root, $"kept{moves}");
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

        // While a file is being written: the first look at its bytes is for its hash, the second writes its first part.
        using var soon = new CancellationTokenSource();
        var looks = 0;
        using var watched = new WatchedBytes(3 << 20, () =>
        {
            if (++looks == 2) soon.Cancel();
        });
        Assert.Throws<OperationCanceledException>(() => new PacketFolder(Target).Replace([File("a.txt", "2"), new("large.bin", watched.Memory)], soon.Token));
        Assert.Equal(2, looks);
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
        Assert.Equal("a file where the folder should be", System.IO.File.ReadAllText(Path.Combine(Root, "out")));
    }

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

    /// <summary>Bytes that tell when they are looked at.</summary>
    private sealed class WatchedBytes(int length, Action looked) : MemoryManager<byte>
    {
        private readonly byte[] _bytes = new byte[length];

        public override Memory<byte> Memory => CreateMemory(_bytes.Length);

        public override Span<byte> GetSpan()
        {
            looked();
            return _bytes;
        }

        public override MemoryHandle Pin(int elementIndex = 0) => throw new NotSupportedException();

        public override void Unpin() => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
        }
    }
}
