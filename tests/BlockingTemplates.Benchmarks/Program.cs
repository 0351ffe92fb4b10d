using BlockingTemplates.Benchmarks;

// --quick: one table of medians in under two minutes; --bare: does nothing but say so, to be started cold; else BenchmarkDotNet's own arguments.
if (args is ["--bare"])
{
    Console.WriteLine("bare");
    return 0;
}

return args is ["--quick"] ? QuickTable.Run() : Switched.Run(args);
