namespace BlockingTemplates.Engine;

/// <summary>One line of the comparison of several plans.</summary>
/// <param name="Name">What is compared, in words.</param>
/// <param name="Measure">What its figures are.</param>
/// <param name="Values">The figure of each part in order; null where it has none.</param>
public sealed record ComparedRow(string Name, ComparedMeasure Measure, IReadOnlyList<double?> Values);
