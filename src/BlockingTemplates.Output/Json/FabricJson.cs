using System.Text.Json;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pins.Settling;

namespace BlockingTemplates.Output.Json;

/// <summary>What the cloth does, as plan.json has it under "fabric".</summary>
internal static class FabricJson
{
    /// <summary>The part, or null where the cloth was not computed or did not come to rest.</summary>
    public static void Write(Plan plan, Utf8JsonWriter json)
    {
        if (plan.Cloth is not { } cloth)
        {
            json.WriteNull("fabric");
            return;
        }

        json.WriteStartObject("fabric");
        json.WriteStartObject("material");
        json.WriteString("told", cloth.Material.Told);
        json.WriteString("source", Source(cloth.Material.Source));
        Spread(json, "newtonsPerMetre", cloth.Material.NewtonsPerMetre);
        json.WriteEndObject();
        // A cloth that did not come to rest is no part of a plan.
        json.WriteBoolean("converged", true);
        json.Significant("residual", cloth.Residual);
        json.WriteNumber("steps", cloth.Steps);
        json.WriteNumber("nodes", cloth.Nodes);
        json.Ratio("smallestAngleDegrees", cloth.SmallestAngleDegrees);
        json.WriteBoolean("decidedSpacing", cloth.DecidedSpacing);
        json.WriteBoolean("bestSoFar", cloth.IsBestSoFar);
        json.Mm("worstScallopMm", cloth.WorstScallopMm);
        Spread(json, "largestLoadNewtons", cloth.LargestLoadNewtons);
        json.List("anchors", cloth.Anchors, a =>
        {
            json.WriteStartObject();
            json.WriteString("anchor", a.Anchor);
            json.Ratio("forceShare", a.ForceShare);
            json.WriteBoolean("taken", a.IsTaken);
            json.WriteEndObject();
        });
        json.List("gaps", cloth.Gaps, g => Gap(plan, g, json));
        Stretch(cloth.Stretch, json);
        json.List("slack", cloth.Slack, r => Region(r, json));
        json.List("beyond", cloth.Beyond, r => Region(r, json));
        json.Line("freeEdge", cloth.FreeEdge);
        json.List("offLine", cloth.OffLine, line => json.Line(line));
        End(json, "soft", cloth.Soft);
        End(json, "stiff", cloth.Stiff);
        json.WriteEndObject();
    }

    private static void Gap(Plan plan, MarkGap gap, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("from", gap.From);
        json.WriteNumber("to", gap.To);
        json.WriteString("edge", plan.Pins.Edges[gap.Edge].Name);
        json.Ratio("fraction", gap.Fraction);
        json.Mm("widthMm", gap.WidthMm);
        json.Mm("scallopMm", gap.Determined == false ? null : gap.ScallopMm);
        json.YesOrNo("determined", gap.Determined);
        json.WriteEndObject();
    }

    private static void Stretch(StretchMap map, Utf8JsonWriter json)
    {
        json.WriteStartObject("stretch");
        json.Mm("cellMm", map.CellMm);
        json.List("cells", map.Cells, c =>
        {
            json.WriteStartObject();
            json.WriteNumber("column", c.Column);
            json.WriteNumber("row", c.Row);
            json.At("at", c.At);
            json.Ratio("along", c.Along);
            json.Ratio("across", c.Across);
            json.WriteString("state", State(c.State));
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Region(ClothRegion region, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.At("middle", region.Middle);
        json.Mm("areaMm2", region.AreaMm2);
        json.List("cells", region.Cells, c =>
        {
            json.WriteStartArray();
            json.WriteNumberValue(c.Column);
            json.WriteNumberValue(c.Row);
            json.WriteEndArray();
        });
        json.WriteEndObject();
    }

    private static void End(Utf8JsonWriter json, string name, ClothEnd? end)
    {
        if (end is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Ratio("pins", end.Pins);
        json.Mm("scallopMm", end.ScallopMm);
        json.WriteEndObject();
    }

    private static void Spread(Utf8JsonWriter json, string name, Spread? spread)
    {
        if (spread is not { } s)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Significant("least", s.Least);
        json.Significant("likely", s.Likely);
        json.Significant("most", s.Most);
        json.WriteEndObject();
    }

    private static string Source(MaterialSource source) => source switch
    {
        MaterialSource.AssumedByKind => "assumed by kind",
        MaterialSource.MeasuredByKind => "measured by kind",
        MaterialSource.Swatch => "swatch",
        MaterialSource.Strips => "strips",
        _ => throw new ArgumentOutOfRangeException(nameof(source)),
    };

    private static string State(ClothState state) => state switch
    {
        ClothState.Slack => "slack",
        ClothState.Wrinkled => "wrinkled",
        ClothState.Taut => "taut",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };
}
