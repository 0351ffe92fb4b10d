using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Mats;

/// <summary>Where a mark lies on its mat.</summary>
/// <param name="Number">The mark's number.</param>
/// <param name="Mat">The mat's name.</param>
/// <param name="OnMat">Distance from the mat's left and lower side, in millimetres.</param>
/// <param name="SeamMm">Distance to the nearest seam between two mats of the field, in millimetres; infinite where there is none.</param>
/// <param name="NearSeam">Whether that is less than the seam clearance: tape the seam there.</param>
public sealed record Seat(int Number, string Mat, Vector OnMat, double SeamMm, bool NearSeam);
