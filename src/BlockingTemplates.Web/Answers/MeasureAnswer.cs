namespace BlockingTemplates.Web.Answers;

/// <summary>A measuring picture and the places of its fields; lengths in the picture's millimetres, y down.</summary>
internal sealed record MeasureAnswer(string Svg, bool IsSketch, double Width, double Height, IReadOnlyList<PlaceAnswer> Places);
