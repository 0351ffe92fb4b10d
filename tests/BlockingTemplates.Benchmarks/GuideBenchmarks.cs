using BenchmarkDotNet.Attributes;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Pdf;

namespace BlockingTemplates.Benchmarks;

/// <summary>A finished plan's guide from pages to bytes, beside the same picture drawn naively.</summary>
[ShortRunJob, MemoryDiagnoser]
public class GuideBenchmarks
{
    private Plan _plan = null!;
    private Document _wholePages = null!;

    /// <summary>Side in millimetres, and whether every sheet of the field is printed.</summary>
    [Params("700", "4000", "4000 all")]
    public string Blanket { get; set; } = "";

    [GlobalSetup]
    public void Plan()
    {
        var words = Blanket.Split(' ');
        _plan = Projects.Planned(Projects.Blanket(int.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture), words.Length > 1));
        _wholePages = NaivePdf.WholeOnEachSheet(_plan);
    }

    /// <summary>Each sheet draws the whole picture and cuts it.</summary>
    [Benchmark(Baseline = true)]
    public int WholePictureOnEachSheet() => new NaivePdf().Write(_wholePages).Length;

    /// <summary>Each sheet draws what it shows, each element by itself; with the making of the pages.</summary>
    [Benchmark]
    public int SeenElementsDirectly() => new NaivePdf().Write(GuideDocument.Draw(_plan, _plan.Guides[0])).Length;

    /// <summary>As the tool does, with the making of the pages.</summary>
    [Benchmark]
    public int Guide() => PdfWriter.Write(GuideDocument.Draw(_plan, _plan.Guides[0])).Length;
}
