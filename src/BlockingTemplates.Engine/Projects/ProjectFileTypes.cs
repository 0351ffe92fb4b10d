using System.Text.Json.Serialization;

namespace BlockingTemplates.Engine.Projects;

// What the JSON schema is made of.
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true)]
[JsonSerializable(typeof(ProjectFile))]
[JsonSerializable(typeof(FinishedSection))]
[JsonSerializable(typeof(UnblockedSection))]
[JsonSerializable(typeof(OutlineSection))]
[JsonSerializable(typeof(CornerSection))]
[JsonSerializable(typeof(SpringBackSection))]
[JsonSerializable(typeof(WetChangeSection))]
internal sealed partial class ProjectFileTypes : JsonSerializerContext;
