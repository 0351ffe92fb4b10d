using System.Globalization;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Drawing.Comparing;

/// <summary>Writes the figures of a comparison.</summary>
public static class ComparedWords
{
    /// <summary>A line's name with its unit.</summary>
    public static string Name(ComparedRow row, LengthUnit units)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Measure switch
        {
            ComparedMeasure.Length => $"{row.Name} ({LengthWords.UnitOf(units)})",
            ComparedMeasure.Stretch => $"{row.Name} (%)",
            _ => row.Name,
        };
    }

    /// <summary>A figure as a maker reads it; a dash where there is none.</summary>
    public static string Figure(ComparedMeasure measure, double? value, LengthUnit units) => value is not { } figure ? "-" : measure switch
    {
        ComparedMeasure.Length => LengthWords.Number(Length.FromMillimetres(figure), units),
        ComparedMeasure.Stretch => (100 * figure).ToString("0.0", CultureInfo.InvariantCulture),
        _ => figure.ToString("0", CultureInfo.InvariantCulture),
    };
}
