using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace BlockingTemplates.Benchmarks;

/// <summary>The page over loopback: how long from an edit of the demo to its new drawing and to its cloth, and what an hour of edits does to the memory.</summary>
internal static partial class PageTable
{
    private const int Warm = 40;
    private const int Edits = 150;
    private const int Cloths = 25;

    /// <summary>A person's pause between two keys.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    public static async Task<int> RunAsync(int hourOfEdits)
    {
        await using var page = await PageProgram.StartAsync();
        var text = Projects.DemoText();
        var id = await page.BeginAsync(text);
        var edited = new EditedText(text);
        async Task<double> EditAsync()
        {
            var next = edited.Next();
            var started = Stopwatch.GetTimestamp();
            await page.EditAsync(id, next);
            return Stopwatch.GetElapsedTime(started).TotalMilliseconds;
        }

        await RepeatAsync(Warm, EditAsync);
        var engine = Median(await RepeatAsync(Edits, () => Task.FromResult(Timed(() => Projects.Planned(edited.Next())))));
        var atOnce = await RepeatAsync(Edits, EditAsync);
        var paced = await RepeatAsync(Edits, async () =>
        {
            await Task.Delay(Pause);
            return await EditAsync();
        });
        Tell($"edit to answer with all drawings, demo over loopback, medians of {Edits}: {Median(paced):0} ms with {Pause.TotalMilliseconds:0} ms between keys ({Share(paced, 100):0} % within 100 ms), {Median(atOnce):0} ms one on the heels of the other; the engine's geometry alone {engine:0} ms");

        List<double> after = [], around = [], own = [];
        for (var i = 0; i < Cloths; i++)
        {
            var next = edited.Next();
            await Task.Delay(Pause);
            var started = Stopwatch.GetTimestamp();
            await page.EditAsync(id, next);
            var worked = await page.ClothAsync(id);
            after.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
            around.Add(after[^1] - worked.TotalMilliseconds);
            await Task.Delay(Pause);
            own.Add(Timed(() => Projects.PlannedWithCloth(next)));
        }

        // The first few warm both programs up.
        after.RemoveRange(0, Cloths / 5);
        around.RemoveRange(0, Cloths / 5);
        own.RemoveRange(0, Cloths / 5);
        Tell($"edit to the answer with the cloth, medians of {after.Count}: {Median(after):0} ms, {Median(around):0} ms of it around the engine's work; the engine in a program of its own, for the same files: {Median(own):0} ms (x {Median(after) / Median(own):0.00})");
        if (await BrowserEdits.MeasureAsync(page.Address, await page.BeginAsync(text)) is { } seen)
            Tell($"key to the new drawing on the screen of a headless Chromium, medians of {seen.Count}: {Median(seen):0} ms ({Share(seen, 100):0} % within 100 ms)");
        for (var done = 0; done <= hourOfEdits; done += hourOfEdits / 6)
        {
            if (done > 0)
                await RepeatAsync(hourOfEdits / 6, EditAsync);
            Tell($"memory after {done,5} more edits: {page.MemoryMb:0} MB");
        }

        return 0;
    }

    private static async Task<List<double>> RepeatAsync(int times, Func<Task<double>> run)
    {
        List<double> took = [];
        for (var i = 0; i < times; i++)
            took.Add(await run());
        return took;
    }

    private static double Timed(Action run)
    {
        var started = Stopwatch.GetTimestamp();
        run();
        return Stopwatch.GetElapsedTime(started).TotalMilliseconds;
    }

    private static double Median(IReadOnlyList<double> took) => took.Order().ElementAt(took.Count / 2);

    private static double Share(IReadOnlyList<double> took, double ms) => 100.0 * took.Count(t => t <= ms) / took.Count;

    private static void Tell(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    /// <summary>The demo's text with another wingspan each time.</summary>
    private sealed partial class EditedText(string text)
    {
        private int _count;

        public string Next() => Wingspan().Replace(text, string.Create(CultureInfo.InvariantCulture, $"\"wingspan\": {148 + (0.1 * (++_count % 20)):0.0}"), 1);

        [GeneratedRegex("\"wingspan\": [0-9.]+")]
        private static partial Regex Wingspan();
    }
}
