using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;
using PdfSharp.Drawing;

namespace BlockingTemplates.Output.Pdf;

/// <summary>Millimetres with y up to the points with y down that PDFsharp draws in.</summary>
/// <param name="HeightMm">Height of the page or form; y of its upper side.</param>
/// <param name="LeftMm">x of its left side.</param>
internal readonly record struct PdfPoints(double HeightMm, double LeftMm = 0)
{
    public static double Of(double millimetres) => Length.FromMillimetres(millimetres).Points;

    public XPoint Of(Point p) => new(Of(p.X - LeftMm), Of(HeightMm - p.Y));

    public XRect Of(Box b) => new(Of(b.Left - LeftMm), Of(HeightMm - b.Upper), Of(b.Width), Of(b.Height));
}
