using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Drawing.MatCharts;
using BlockingTemplates.Drawing.Overviews;
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
        var overview = OverviewPicture.Draw(plan);
        var title = GuideDocument.Title(plan);
        List<(string Name, Func<byte[]> Write)> files =
        [
            ("overview.svg", () => SvgWriter.Write(overview, title)),
            ("overview.png", () => PngWriter.Write(overview, OverviewDotsPerInch)),
        ];
        if (!pictureOnly)
        {
            files.AddRange(plan.Guides.Select(g => ($"guide-{SafeFileName.From(g.Paper.Name)}.pdf", (Func<byte[]>)(() => PdfWriter.Write(GuideDocument.Draw(plan, g))))));
            files.Add(("mats.pdf", () => PdfWriter.Write(MatChart.Draw(plan))));
            files.Add(("plot.pdf", () => PdfWriter.Write(PlotDocument.Draw(plan))));
            files.Add(("pins.csv", () => PinsCsv.Write(plan)));
            files.Add(("plan.json", () => PlanJson.Write(plan)));
        }

        return [.. files.AsParallel().AsOrdered().WithCancellation(cancellation).Select(f => new PacketFile(f.Name, f.Write()))];
    }
}
