using System.Text;
using BlockingTemplates.Drawing.Forms;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Output.Svg;
using BlockingTemplates.Web.Stages;

namespace BlockingTemplates.Web.Answers;

/// <summary>Puts what the engine found into the page's words and pictures.</summary>
internal static class Answering
{
    /// <summary>The units a maker may choose, each with the step its tape is read in.</summary>
    public static IReadOnlyList<UnitAnswer> Units { get; } = [.. Enum.GetValues<LengthUnit>().Select(Unit)];

    /// <summary>The answer of a stage.</summary>
    public static StageAnswer Of(StageResult result)
    {
        var project = result.Project;
        return new(
            result.Version,
            result.Stage,
            result.IsFinal,
            project?.Kind.Shape,
            Unit(result.Findings.Units),
            [.. result.Findings.Problems.Select(p => new FoundAnswer(p.Path, p.What, p.Do, p.Line))],
            [.. result.Findings.Notes.Select(n => new FoundAnswer(n.Place, n.What, n.Do, n.Line))],
            project is null ? null : Picture(MeasuringPicture.Finished(project.Kind, project.Finished)),
            project is null ? null : Picture(MeasuringPicture.Unblocked(project.Kind, project.Unblocked)),
            result.Parts.Count > 0 ? PlanAnswering.Of(result.Parts, 0) : null,
            [.. result.Parts.Skip(1).Select((_, i) => PlanAnswering.Of(result.Parts, i + 1))]);
    }

    /// <summary>A picture as SVG for the page, which has the fonts.</summary>
    public static string Svg(Page page, string title) => Encoding.UTF8.GetString(SvgWriter.Write(page, title, withFonts: false));

    private static UnitAnswer Unit(LengthUnit unit) => new(
        LengthWords.UnitOf(unit),
        unit switch
        {
            LengthUnit.Millimetres => 1,
            LengthUnit.Centimetres => Length.FromCentimetres(1).Millimetres,
            LengthUnit.Inches => Length.FromInches(1).Millimetres,
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        },
        unit switch { LengthUnit.Millimetres => 1, LengthUnit.Centimetres => 0.1, _ => 0.125 });

    private static MeasureAnswer Picture(MeasuringPicture picture)
    {
        var height = picture.Page.HeightMm;
        return new(
            Svg(picture.Page, ""),
            picture.IsSketch,
            picture.Page.WidthMm,
            height,
            [.. picture.Places.Select(p => new PlaceAnswer(p.Path, Round(p.At.X), Round(height - p.At.Y), Round(p.Away.X), Round(-p.Away.Y), p.Handle is { } h
                ? new(Round(h.From.X), Round(height - h.From.Y), h.Along.X, -h.Along.Y, h.MmPerPageMm, Round(h.ValueMm), h.IsSigned)
                : null))]);
    }

    private static double Round(double value) => Math.Round(value, 3) + 0.0;
}
