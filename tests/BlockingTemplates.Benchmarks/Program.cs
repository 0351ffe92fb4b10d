using BlockingTemplates.Benchmarks;

// --quick: one table of medians in under two minutes; --solve [RUNS]: the linear solve beside CHOLMOD; --cloth: the demo with its cloth, and how the cost grows; --page [EDITS]: the page over loopback, and its memory over so many edits; --every-shift: the slow counter on every shift of the demo (minutes); --bare: does nothing but say so, to be started cold; else BenchmarkDotNet's own arguments.
if (args is ["--bare"])
{
    Console.WriteLine("bare");
    return 0;
}

if (args is ["--every-shift"])
{
    SearchBenchmarks.Every = 1;
    Console.WriteLine($"the slow counter on every shift agrees: {new SearchBenchmarks().Agrees()}");
    return 0;
}

if (args is ["--cloth"])
    return ClothTable.Run();

if (args is ["--solve", ..])
    return SolveTable.Run(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 9);

if (args is ["--page", ..])
    return await PageTable.RunAsync(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 3600);

return args is ["--quick"] ? QuickTable.Run() : Switched.Run(args);
