using BenchmarkDotNet.Running;

namespace BlockingTemplates.Benchmarks;

internal static class Switched
{
    public static int Run(string[] args)
    {
        BenchmarkSwitcher.FromAssembly(typeof(Switched).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args);
        return 0;
    }
}
