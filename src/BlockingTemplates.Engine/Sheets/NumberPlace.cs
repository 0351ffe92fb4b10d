using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Sheets;

/// <summary>Where the number of a mark stands on the guide.</summary>
/// <param name="Number">The mark's number.</param>
/// <param name="Partner">The number of its mirror partner where half a guide carries both, else null.</param>
/// <param name="Spot">Its box, its height, inside or outside.</param>
/// <param name="LeaderTo">Where the leader from the mark ends: the nearest point of the box.</param>
/// <param name="Sheet">The sheet on which it is seen whole once taped.</param>
/// <param name="IsCrowded">Whether no free place was found and it may touch another number.</param>
public sealed record NumberPlace(int Number, int? Partner, NumberSpot Spot, Point LeaderTo, Sheet Sheet, bool IsCrowded);
