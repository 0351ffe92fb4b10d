using System.Runtime.InteropServices;

namespace BlockingTemplates.Benchmarks;

/// <summary>The calls into the libraries.</summary>
internal sealed partial class Cholmod
{
    private const string Library = "libcholmod.so.3";
    private const string Blas = "libopenblas.so.0";

    [DllImport(Library, EntryPoint = "cholmod_start")]
    private static extern int Start(nint common);

    [DllImport(Library, EntryPoint = "cholmod_finish")]
    private static extern int Finish(nint common);

    [DllImport(Library, EntryPoint = "cholmod_version")]
    private static extern int Version([Out] int[] version);

    [DllImport(Library, EntryPoint = "cholmod_analyze")]
    private static extern nint Analyze(ref Sparse matrix, nint common);

    [DllImport(Library, EntryPoint = "cholmod_factorize")]
    private static extern int Factorize(ref Sparse matrix, nint factor, nint common);

    [DllImport(Library, EntryPoint = "cholmod_solve")]
    private static extern nint SolveFactored(int system, nint factor, ref Dense right, nint common);

    [DllImport(Library, EntryPoint = "cholmod_free_factor")]
    private static extern int FreeFactor(ref nint factor, nint common);

    [DllImport(Library, EntryPoint = "cholmod_free_dense")]
    private static extern int FreeDense(ref nint dense, nint common);

    [DllImport(Blas, EntryPoint = "openblas_set_num_threads")]
    private static extern void SetThreads(int threads);

    [DllImport("libc", EntryPoint = "mallopt")]
    private static extern int SetMallocOption(int option, int value);
}
