using System.Text.Json.Serialization;

namespace BlockingTemplates.Web.Answers;

[JsonSerializable(typeof(Refusal))]
[JsonSerializable(typeof(StartAnswer))]
[JsonSerializable(typeof(StageAnswer))]
[JsonSerializable(typeof(EditAnswer))]
[JsonSerializable(typeof(CopyAnswer))]
[JsonSerializable(typeof(IReadOnlyList<CopyAnswer>))]
[JsonSerializable(typeof(ChangeAnswer))]
[JsonSerializable(typeof(PinningAnswer))]
[JsonSerializable(typeof(ShareAnswer))]
[JsonSerializable(typeof(NewCopy))]
[JsonSerializable(typeof(PinStep))]
[JsonSerializable(typeof(JoinRequest))]
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, MaxDepth = 12)]
internal sealed partial class PageJson : JsonSerializerContext;
