namespace BlockingTemplates.Web.Answers;

/// <summary>One pin: its place on the view (millimetres, y down) and its words.</summary>
internal sealed record PinAnswer(
    int Number, string Kind, int Round, string Form, string Where, double X, double Y, PullAnswer? Pull, PullAnswer? InTurn, string Mat, string FromLeft, string FromLower);
