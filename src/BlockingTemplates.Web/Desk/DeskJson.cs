using System.Text.Json.Serialization;

namespace BlockingTemplates.Web.Desk;

[JsonSerializable(typeof(CopyCard))]
[JsonSerializable(typeof(PinsSoFar))]
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
internal sealed partial class DeskJson : JsonSerializerContext;
