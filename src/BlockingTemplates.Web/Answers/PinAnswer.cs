namespace BlockingTemplates.Web.Answers;

/// <summary>One pin: its place on the view (millimetres, y down) and its words.</summary>
internal sealed record PinAnswer(
    int Number, int Round, string Form, string Where, double X, double Y, string? Pull, string? Direction, double? Angle, string Mat, string FromLeft, string FromLower);
