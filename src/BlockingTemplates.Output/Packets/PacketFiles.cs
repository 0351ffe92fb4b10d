using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.MatCharts;
using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine;
using BlockingTemplates.Output.Csv;
using BlockingTemplates.Output.Json;
using BlockingTemplates.Output.Pdf;
using BlockingTemplates.Output.Png;
using BlockingTemplates.Output.Svg;

namespace BlockingTemplates.Output.Packets;

/// <summary>All files of a plan's packet, ready to be written.</summary>
public static class PacketFiles
{
    /// <summary>Dots an inch of overview.png.</summary>
    public const double OverviewDotsPerInch = 150;

    /// <summary>The files of a plan; the guides are made side by side.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="pictureOnly">Whether only the overview is wanted.</param>
    /// <param name="cancellation">Stops between files.</param>
    public static IReadOnlyList<PacketFile> Of(Plan plan, bool pictureOnly = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Writers(plan).Where(f => !pictureOnly || f.IsPicture).AsParallel().AsOrdered().WithCancellation(cancellation).Select(f => new PacketFile(f.Name, f.Write()))];
    }

    /// <summary>The names of a plan's files, in their order, and how each is written.</summary>
    internal static IReadOnlyList<(string Name, bool IsPicture, Func<byte[]> Write)> Writers(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var overview = new Lazy<Page>(() => OverviewPicture.Draw(plan));
        return
        [
            ("overview.svg", true, () => SvgWriter.Write(overview.Value, GuideDocument.Title(plan))),
            ("overview.png", true, () => PngWriter.Write(overview.Value, OverviewDotsPerInch)),
            .. plan.Guides.Select(g => ($"guide-{SafeFileName.From(g.Paper.Name)}.pdf", false, (Func<byte[]>)(() => PdfWriter.Write(GuideDocument.Draw(plan, g))))),
            ("mats.pdf", false, () => PdfWriter.Write(MatChart.Draw(plan))),
            ("plot.pdf", false, () => PdfWriter.Write(PlotDocument.Draw(plan))),
            ("pins.csv", false, () => PinsCsv.Write(plan)),
            ("plan.json", false, () => PlanJson.Write(plan)),
        ];
    }
}
