using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects.Sections;

namespace BlockingTemplates.Engine.Projects;

/// <summary>The JSON schema of a project file, for editors that complete and check while one types.</summary>
/// <remarks>
/// Made of the same records as the reader's names, by the dialect of JSON Schema 2020-12. It says what may stand where;
/// what depends on a length's unit, on names given in the file or on geometry only the reader can say.
/// </remarks>
public static class ProjectSchema
{
    private const string LengthPattern = "^[^,]{1,64}$";

    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static readonly JsonSchemaExporterOptions Export = new()
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = Transformed,
    };

    /// <summary>The schema's text, lines apart by \n; the same for the same kinds.</summary>
    /// <param name="kinds">The kinds of piece, in the order they are listed.</param>
    public static string Text(IReadOnlyList<PieceKind> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        var root = Of(ProjectFileTypes.Default.ProjectFile);
        var piece = (JsonObject)root["properties"]!["piece"]!;
        piece["allOf"] = new JsonArray([.. kinds.Select(WhereShapeIs)]);
        var definitions = new JsonObject
        {
            ["length"] = Length(),
            ["lengthPair"] = PairOf(Reference("length")),
            ["corner"] = new JsonObject { ["anyOf"] = new JsonArray(Reference("lengthPair"), Of(ProjectFileTypes.Default.CornerSection)) },
            ["shape"] = Words(kinds.Select(k => k.Shape)),
        };
        foreach (var kind in kinds)
        {
            definitions[kind.Shape + "Finished"] = Finished(kind);
            definitions[kind.Shape + "Unblocked"] = Unblocked(kind);
        }

        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Blocking project",
        };
        foreach (var (name, value) in root)
            schema[name] = value?.DeepClone();
        schema["$defs"] = definitions;
        return schema.ToJsonString(Written) + "\n";
    }

    private static JsonObject Of(JsonTypeInfo section) => (JsonObject)section.GetJsonSchemaAsNode(Export);

    private static JsonObject WhereShapeIs(PieceKind kind)
    {
        var properties = new JsonObject
        {
            ["finished"] = Reference(kind.Shape + "Finished"),
            ["unblocked"] = OrNull(Reference(kind.Shape + "Unblocked")),
        };
        if (!kind.GivenByCorners)
            properties["edges"] = new JsonObject { ["propertyNames"] = Words(kind.EdgeNames) };
        return new()
        {
            ["if"] = new JsonObject { ["properties"] = new JsonObject { ["shape"] = new JsonObject { ["const"] = kind.Shape } } },
            ["then"] = new JsonObject { ["properties"] = properties },
        };
    }

    private static JsonObject Finished(PieceKind kind) =>
        kind.GivenByCorners ? ByCorners() : ByName(kind, kind.FinishedSizes);

    private static JsonObject Unblocked(PieceKind kind)
    {
        if (kind.GivenByCorners)
            return ByCorners();
        if (!kind.IsMeasuredBySides)
            return ByName(kind, kind.UnblockedSizes);
        var section = WithEdges(Of(ProjectFileTypes.Default.UnblockedSection), kind.EdgeNames);
        var properties = (JsonObject)section["properties"]!;
        if (!kind.TakesDiagonal)
            properties["diagonal"] = new JsonObject { ["type"] = "null" };
        else
        {
            foreach (var end in (string[])["from", "to"])
                properties["diagonal"]!["properties"]![end]!["enum"] = new JsonArray([.. kind.CornerNames.Select(c => JsonValue.Create(c))]);
        }

        return section;
    }

    private static JsonObject ByCorners()
    {
        var section = Of(ProjectFileTypes.Default.OutlineSection);
        section["anyOf"] = new JsonArray([.. ((string[])["corners", "file"]).Select(n => new JsonObject
        {
            ["properties"] = new JsonObject { [n] = new JsonObject { ["not"] = new JsonObject { ["type"] = "null" } } },
            ["required"] = new JsonArray(n),
        })]);
        return section;
    }

    private static JsonObject ByName(PieceKind kind, IReadOnlyList<SizeName> sizes)
    {
        var section = WithEdges(Of(ProjectFileTypes.Default.FinishedSection), kind.StraightEdges);
        var properties = new JsonObject();
        foreach (var size in sizes)
        {
            var otherWay = size.InsteadOf is null ? "" : $" (instead of {size.InsteadOf})";
            properties[size.Name] = new JsonObject { ["description"] = $"{char.ToUpperInvariant(size.HowToTake[0])}{size.HowToTake[1..]}{otherWay}.", ["$ref"] = "#/$defs/length" };
        }

        foreach (var (name, value) in (JsonObject)section["properties"]!)
        {
            if (kind.StraightEdges.Count > 0)
                properties[name] = value?.DeepClone();
        }

        section["properties"] = properties;
        var replaced = sizes.Select(s => s.InsteadOf).OfType<string>().ToHashSet();
        section["required"] = NamesOf(sizes.Where(s => s.IsAsked && !replaced.Contains(s.Name)));
        if (replaced.Count > 0)
        {
            section["allOf"] = new JsonArray([.. replaced.Select(r => AnyOf(
                new JsonObject { ["required"] = new JsonArray(r) },
                new JsonObject { ["required"] = NamesOf(sizes.Where(s => s.InsteadOf == r)) }))]);
        }

        return section;
    }

    private static JsonArray NamesOf(IEnumerable<SizeName> sizes) => [.. sizes.Select(s => (JsonNode)s.Name)];

    // Maps from an edge's name know the names.
    private static JsonObject WithEdges(JsonObject section, IReadOnlyList<string> edges)
    {
        foreach (var (_, value) in (JsonObject)section["properties"]!)
        {
            if (value is JsonObject map && map["additionalProperties"] is JsonObject)
                map["propertyNames"] = Words(edges);
        }

        return section;
    }

    private static JsonObject Transformed(JsonSchemaExporterContext context, JsonNode node)
    {
        var type = context.TypeInfo.Type;
        var value = Nullable.GetUnderlyingType(type) ?? type;
        var schema = Alternative(value);
        if (schema is not null && value != type)
            schema = OrNull(schema);
        // Reserved names take anything: the schema "true".
        schema ??= node as JsonObject ?? [];
        if (context.PropertyInfo?.AttributeProvider is not { } attributes)
            return schema;
        foreach (var attribute in attributes.GetCustomAttributes(inherit: false))
        {
            switch (attribute)
            {
                case DescriptionAttribute description:
                    schema.Insert(0, "description", description.Description);
                    break;
                case RangeAttribute range:
                    schema["minimum"] = JsonValue.Create(Convert.ToDouble(range.Minimum, System.Globalization.CultureInfo.InvariantCulture));
                    schema["maximum"] = JsonValue.Create(Convert.ToDouble(range.Maximum, System.Globalization.CultureInfo.InvariantCulture));
                    break;
                case AtMostAttribute most:
                    schema[type == typeof(string) ? "maxLength" : "maxItems"] = most.Count;
                    break;
            }
        }

        return schema;
    }

    private static JsonObject? Alternative(Type value) =>
        value.IsEnum ? Words(Sections.Words.Of(value))
        : value == typeof(LengthValue) ? Reference("length")
        : value == typeof(LengthPair) ? Reference("lengthPair")
        : value == typeof(CornerValue) ? Reference("corner")
        : value == typeof(ShapeValue) ? Reference("shape")
        : value == typeof(FinishedValue) || value == typeof(UnblockedValue) ? new JsonObject()
        : value == typeof(SpringBackValue) ? AnyOf(Within(Limits.LeastSpringBack, Limits.MostSpringBack), Of(ProjectFileTypes.Default.SpringBackSection))
        : value == typeof(WetChangeValue) ? AnyOf(Within(Limits.LeastWetChange, Limits.MostWetChange), Of(ProjectFileTypes.Default.WetChangeSection))
        : value == typeof(MatSizeValue) ? AnyOf(Reference("length"), Reference("lengthPair"))
        : value == typeof(TurnsValue) ? AnyOf(ListOf(new JsonObject { ["enum"] = new JsonArray(0, 90) }, 2), new JsonObject { ["const"] = "free" })
        : value == typeof(PaperValue) ? AnyOf(new JsonObject { ["type"] = "string" }, ListOf(new JsonObject { ["type"] = "string" }, Limits.MostPapers))
        : null;

    private static JsonObject Length() => new()
    {
        ["description"] = "A length: a number in the file's units, or text with its own unit, such as \"48 3/4 in\" or \"1.24 m\".",
        ["type"] = new JsonArray("number", "string"),
        ["pattern"] = LengthPattern,
    };

    private static JsonObject Within(double least, double most) => new() { ["type"] = "number", ["minimum"] = least, ["maximum"] = most };

    private static JsonObject PairOf(JsonObject item) => new() { ["type"] = "array", ["items"] = item, ["minItems"] = 2, ["maxItems"] = 2 };

    private static JsonObject ListOf(JsonObject item, int most) => new()
    {
        ["type"] = "array",
        ["items"] = item,
        ["minItems"] = 1,
        ["maxItems"] = most,
        ["uniqueItems"] = true,
    };

    private static JsonObject AnyOf(params JsonNode[] choices) => new() { ["anyOf"] = new JsonArray(choices) };

    private static JsonObject OrNull(JsonObject schema) => AnyOf(schema, new JsonObject { ["type"] = "null" });

    private static JsonObject Reference(string name) => new() { ["$ref"] = "#/$defs/" + name };

    private static JsonObject Words(IEnumerable<string> words) => new() { ["enum"] = new JsonArray([.. words.Select(w => JsonValue.Create(w))]) };
}
