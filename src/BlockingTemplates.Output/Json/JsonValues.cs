using System.Globalization;
using System.Text.Json;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Output.Json;

/// <summary>Writes numbers and places as plan.json has them: millimetres to 0.001, null for what is not known.</summary>
internal static class JsonValues
{
    private const int Decimals = 3;

    public static void Mm(this Utf8JsonWriter json, string name, double? mm)
    {
        json.WritePropertyName(name);
        json.Mm(mm);
    }

    public static void Mm(this Utf8JsonWriter json, double? mm)
    {
        if (mm is { } value && double.IsFinite(value))
            json.WriteNumberValue((decimal)Math.Round(value, Decimals));
        else
            json.WriteNullValue();
    }

    /// <summary>A number without a unit, to 0.000001.</summary>
    public static void Ratio(this Utf8JsonWriter json, string name, double? ratio)
    {
        if (ratio is { } value)
            json.WriteNumber(name, (decimal)Math.Round(value, 6));
        else
            json.WriteNull(name);
    }

    /// <summary>A number without a unit, to four figures.</summary>
    public static void Significant(this Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));

    public static void YesOrNo(this Utf8JsonWriter json, string name, bool? value)
    {
        if (value is { } known)
            json.WriteBoolean(name, known);
        else
            json.WriteNull(name);
    }

    public static void At(this Utf8JsonWriter json, string name, Point? place)
    {
        json.WritePropertyName(name);
        if (place is { } p)
            json.Pair(p.X, p.Y);
        else
            json.WriteNullValue();
    }

    public static void Pair(this Utf8JsonWriter json, double x, double y)
    {
        json.WriteStartArray();
        json.Mm(x);
        json.Mm(y);
        json.WriteEndArray();
    }

    public static void Line(this Utf8JsonWriter json, string name, IEnumerable<Point>? points)
    {
        json.WritePropertyName(name);
        if (points is null)
        {
            json.WriteNullValue();
            return;
        }

        json.Line(points);
    }

    public static void Line(this Utf8JsonWriter json, IEnumerable<Point> points)
    {
        json.WriteStartArray();
        foreach (var p in points)
            json.Pair(p.X, p.Y);
        json.WriteEndArray();
    }

    public static void List<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
            write(item);
        json.WriteEndArray();
    }
}
