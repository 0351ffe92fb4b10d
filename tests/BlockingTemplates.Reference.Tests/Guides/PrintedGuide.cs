using System.Collections.Concurrent;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Output.Pdf;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Guides;

// A shipped example through the whole pipeline to a PDF and back: what an outside reader finds in it. Each is made once.
internal static class PrintedGuide
{
    private static readonly ConcurrentDictionary<object, Lazy<(Plan, IReadOnlyList<PaperPage>)>> Made = new();

    public static (Plan Plan, IReadOnlyList<PaperPage> Pages) Of(
        string example, string paper, GuideUse use = GuideUse.Prick, (double Short, double Long)? measuredMm = null) =>
        Made.GetOrAdd((example, paper, use, measuredMm), _ => new(() =>
        {
            var plan = Planned.Of(Repository.Example(example), Planned.On(paper, use, measuredMm));
            return (plan, PaperPage.Read(Pdf(plan)));
        })).Value;

    public static byte[] Pdf(Plan plan) => PdfWriter.Write(GuideDocument.Draw(plan, plan.Guides[0]));
}
