using System.Runtime.InteropServices;

namespace BlockingTemplates.Benchmarks;

/// <summary>CHOLMOD 3.0 of SuiteSparse 5 with OpenBLAS, as Debian's libcholmod3 and libopenblas0-pthread bring them; for comparison only.</summary>
internal sealed partial class Cholmod : IDisposable
{
    // Offsets in cholmod_common and sizes of the header of SuiteSparse 5.12 (Debian 12) on a 64-bit machine.
    private const int CommonBytes = 4096;
    private const int SupernodalAt = 48;
    private const int PrintAt = 144;
    private const int MethodsAt = 168;
    private const int OrderingOfFirstMethodAt = 184 + 132;
    private const int StatusAt = 1972;
    private const int MostMemoryAt = 2016;
    private const int AlwaysSupernodal = 2;

    // Of malloc.h: what is freed goes back to the system beyond the one, what is mapped apart is limited in number by the other.
    private const int TrimThreshold = -1;
    private const int MostMappings = -4;

    private readonly nint _common;

    private Cholmod()
    {
        _common = Marshal.AllocHGlobal(CommonBytes);
        _ = Start(_common);
        Marshal.WriteInt32(_common, PrintAt, 0);
        Marshal.WriteInt32(_common, SupernodalAt, AlwaysSupernodal);
        Marshal.WriteInt32(_common, MethodsAt, 1);
    }

    /// <summary>The most memory that it took so far, in bytes, without OpenBLAS' own.</summary>
    public long MostMemory => Marshal.ReadInt64(_common, MostMemoryAt);

    /// <summary>Why it cannot be compared with here, or null where it can.</summary>
    public static string? Absence()
    {
        if (!OperatingSystem.IsLinux() || RuntimeInformation.ProcessArchitecture != Architecture.X64)
            return "CHOLMOD is compared with on Linux and x64 only.";
        if (!NativeLibrary.TryLoad(Library, out _) || !NativeLibrary.TryLoad(Blas, out _))
            return "CHOLMOD or OpenBLAS is not there (Debian: apt-get install libcholmod3 libopenblas0-pthread).";
        var version = new int[3];
        _ = Version(version);
        if (version[0] != 3 || version[1] != 0)
            return $"This CHOLMOD is {version[0]}.{version[1]}; 3.0 is known.";
        return File.ReadAllText("/proc/self/maps").Contains("/libblas.so", StringComparison.Ordinal) && !BlasIsOpenBlas()
            ? "CHOLMOD's BLAS here is not OpenBLAS (Debian: update-alternatives --config libblas.so.3-x86_64-linux-gnu)."
            : null;
    }

    /// <summary>Orders, analyses, factors and solves.</summary>
    public static (double[] Solution, long MostMemory) Solve(PulledCloth cloth, CholmodOrdering ordering, int threads)
    {
        // As ours does, it keeps the memory of earlier runs.
        _ = SetMallocOption(TrimThreshold, int.MaxValue);
        _ = SetMallocOption(MostMappings, 0);
        SetThreads(threads);
        using var cholmod = new Cholmod();
        return (cholmod.Solve(cloth, ordering), cholmod.MostMemory);
    }

    public void Dispose()
    {
        _ = Finish(_common);
        Marshal.FreeHGlobal(_common);
    }

    private static bool BlasIsOpenBlas() =>
        new FileInfo("/usr/lib/x86_64-linux-gnu/libblas.so.3").ResolveLinkTarget(returnFinalTarget: true)?.FullName.Contains("openblas", StringComparison.Ordinal) == true;

    private double[] Solve(PulledCloth cloth, CholmodOrdering ordering)
    {
        Marshal.WriteInt32(_common, OrderingOfFirstMethodAt, (int)ordering);
        var (start, row, value) = cloth.Columns;
        var pins = new GCHandle[] { Pinned(start), Pinned(row), Pinned(value), Pinned(cloth.Right) };
        var n = (nuint)cloth.Unknowns;
        var matrix = new Sparse
        {
            Rows = n,
            Columns = n,
            Most = (nuint)row.Length,
            Start = pins[0].AddrOfPinnedObject(),
            Row = pins[1].AddrOfPinnedObject(),
            Value = pins[2].AddrOfPinnedObject(),
            Half = 1,
            ValueKind = 1,
            IsSorted = 1,
            IsPacked = 1,
        };
        var right = new Dense { Rows = n, Columns = 1, Most = n, Leading = n, Value = pins[3].AddrOfPinnedObject(), ValueKind = 1 };
        var factor = Analyze(ref matrix, _common);
        if (Factorize(ref matrix, factor, _common) == 0 || Marshal.ReadInt32(_common, StatusAt) != 0)
            throw new InvalidOperationException($"CHOLMOD ended with {Marshal.ReadInt32(_common, StatusAt)}.");
        var answer = SolveFactored(0, factor, ref right, _common);
        var solution = new double[cloth.Unknowns];
        Marshal.Copy(Marshal.PtrToStructure<Dense>(answer).Value, solution, 0, solution.Length);
        _ = FreeDense(ref answer, _common);
        _ = FreeFactor(ref factor, _common);
        foreach (var pin in pins)
            pin.Free();
        return solution;
    }

    private static GCHandle Pinned(Array array) => GCHandle.Alloc(array, GCHandleType.Pinned);

    private struct Sparse
    {
        public nuint Rows, Columns, Most;
        public nint Start, Row, CountOfColumn, Value, Imaginary;
        public int Half, IndexKind, ValueKind, Precision, IsSorted, IsPacked;
    }

    private struct Dense
    {
        public nuint Rows, Columns, Most, Leading;
        public nint Value, Imaginary;
        public int ValueKind, Precision;
    }
}
