namespace BlockingTemplates.Web.Answers;

/// <summary>How many of one thing a plan takes.</summary>
/// <param name="Kind">pin, comb or wire.</param>
/// <param name="Name">What it is called.</param>
/// <param name="LayOut">To lay out, spares left out.</param>
/// <param name="Spare">Spares to lay beside them.</param>
/// <param name="Owned">At hand, or null if not said.</param>
/// <param name="Buy">To buy, or null where what is owned is not said.</param>
internal sealed record SupplyAnswer(string Kind, string Name, int LayOut, int Spare, int? Owned, int? Buy);
