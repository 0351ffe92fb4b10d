using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>The names in a section of a project file: those of its record, as the schema writes them.</summary>
/// <remarks>The record's properties are asked directly, which trimming and native compilation allow: the serializer's own account of them takes a hundred times as long to set up.</remarks>
internal static class SectionNames
{
    /// <summary>The names, in the order of the record.</summary>
    public static IReadOnlyList<string> Of<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TRecord>() => Known<TRecord>.Names;

    private static class Known<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TRecord>
    {
        public static readonly IReadOnlyList<string> Names =
            [.. typeof(TRecord).GetProperties().Select(p => p.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(p.Name))];
    }
}
