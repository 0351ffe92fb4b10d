using System.Diagnostics;
using System.Globalization;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Output.Pdf;

namespace BlockingTemplates.Benchmarks;

/// <summary>The same comparisons by stopwatch: medians in one run, told as ratios.</summary>
internal static class QuickTable
{
    public static int Run()
    {
        Tell("guide of a square blanket on A4: time and size beside the naive ways, in the same run");
        foreach (var (side, all) in new[] { (700, false), (4000, false), (4000, true) })
            Guide(side, all);
        Tell("search for the demo, all shifts of 1 mm; the slow counter tries one shift in 529");
        var search = new SearchBenchmarks();
        Tell((FormattableString)$"  mats   {Median(5, () => search.Mats()):0.0} ms, slow {Median(1, () => search.SlowMats()):0} ms; sheets {Median(5, () => search.Sheets()):0.0} ms, slow {Median(1, () => search.SlowSheets()):0} ms; answers agree: {search.Agrees()}");
        Tell("cold starts, processes with the ordinary runtime");
        var folder = Directory.CreateTempSubdirectory().FullName;
        var bare = Median(5, () => Start("BlockingTemplates.Benchmarks.dll", "--bare"));
        var demo = Median(5, () => Start("blocking-templates.dll", "demo", "--out", Path.Combine(folder, "demo")));
        Tell((FormattableString)$"  bare {bare:0} ms, demo {demo:0} ms, ratio {demo / bare:0.0}");
        var file = Path.Combine(folder, "blanket.json");
        File.WriteAllText(file, Projects.Blanket(4000, all: true));
        var peak = Start("blocking-templates.dll", "plan", file, "--out", Path.Combine(folder, "blanket"));
        Tell((FormattableString)$"  whole packet of the 4 m blanket with all sheets: most memory {peak / 1e6:0} MB");
        Directory.Delete(folder, recursive: true);
        return 0;
    }

    private static void Guide(int side, bool all)
    {
        var plan = Projects.Planned(Projects.Blanket(side, all));
        var (seen, whole) = (GuideDocument.Draw(plan, plan.Guides[0]), NaivePdf.WholeOnEachSheet(plan));
        var sheets = plan.Guides[0].Layout.Sheets.Count;
        var (own, direct, naive) = (0, 0, 0);
        var ownTime = Median(5, () => own = PdfWriter.Write(GuideDocument.Draw(plan, plan.Guides[0])).Length);
        var directTime = Median(5, () => direct = new NaivePdf().Write(GuideDocument.Draw(plan, plan.Guides[0])).Length);
        var naiveTime = Median(1, () => naive = new NaivePdf().Write(whole).Length);
        Tell((FormattableString)$"  {sheets,3} sheets of {seen.Pages.Count} pages: {ownTime:0} ms, {own / 1e3:0} kB, {ownTime / sheets:0.00} ms a sheet");
        Tell((FormattableString)$"      beside the whole picture on each sheet: time x {ownTime / naiveTime:0.00} of {naiveTime:0} ms, size x {(double)own / naive:0.000} of {naive / 1e3:0} kB");
        Tell((FormattableString)$"      beside each seen element by itself:     time x {ownTime / directTime:0.00} of {directTime:0} ms, size x {(double)own / direct:0.000} of {direct / 1e3:0} kB");
    }

    private static double Median(int times, Func<long> run)
    {
        if (times > 1)
            run();
        List<double> took = [];
        for (var i = 0; i < times; i++)
        {
            var started = Stopwatch.GetTimestamp();
            run();
            took.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
        }

        took.Sort();
        return took[took.Count / 2];
    }

    /// <summary>Starts a program beside this one; the most memory it was seen to have, in bytes.</summary>
    private static long Start(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, words[0]), .. words[1..]]) { RedirectStandardOutput = true };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEndAsync();
        long peak = 0;
        while (!process.WaitForExit(10))
        {
            process.Refresh();
            if (!process.HasExited)
                peak = Math.Max(peak, process.PeakWorkingSet64);
        }

        said.Wait();
        return process.ExitCode == 0 ? peak : throw new InvalidOperationException($"{words[0]} ended with {process.ExitCode}: {said.Result}");
    }

    private static void Tell(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static void Tell(string line) => Console.WriteLine(line);
}
