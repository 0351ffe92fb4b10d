using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>A squared grid from the frame's origin: every 5 cm, or every 2 in.</summary>
internal sealed class GridPicture(LengthUnit units)
{
    private readonly double _pitch = (units == LengthUnit.Inches ? Length.FromInches(2) : Length.FromCentimetres(5)).Millimetres;

    public IEnumerable<Element> In(Box box)
    {
        for (var i = Math.Ceiling(box.Left / _pitch); i * _pitch <= box.Right; i++)
            yield return new PathElement(PathSteps.Line(new(i * _pitch, box.Lower), new(i * _pitch, box.Upper)), GuideInk.Grid);
        for (var i = Math.Ceiling(box.Lower / _pitch); i * _pitch <= box.Upper; i++)
            yield return new PathElement(PathSteps.Line(new(box.Left, i * _pitch), new(box.Right, i * _pitch)), GuideInk.Grid);
    }
}
