namespace BlockingTemplates.Web.Answers;

/// <summary>A line along which a value is dragged: where it is 0, its direction, millimetres of the value for one of the picture, the value now.</summary>
internal sealed record HandleAnswer(double X, double Y, double AlongX, double AlongY, double MmPerMm, double ValueMm, bool IsSigned);
