using BlockingTemplates.Engine.Projects.Text;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>Names and values that are read but not used yet. When a part arrives, its line here goes.</summary>
internal static class NotYetArrived
{
    private static readonly Waiting[] All =
    [
        new("fringe", null, "fringe and tassels", "Space them yourself."),
    ];

    /// <summary>Notes every name and value that waits, and sets it aside so that it reads as left out.</summary>
    public static void Note(JsonPlace root, FileReading reading)
    {
        foreach (var waiting in All)
        {
            foreach (var place in Places([root], waiting.Path.Split('.')).Where(waiting.IsAskedAt))
            {
                place.IsSetAside = true;
                reading.Note(place, $"This part has not arrived yet: {waiting.Part}; the plan is made without it.", waiting.Do);
            }
        }
    }

    private static IEnumerable<JsonPlace> Places(IEnumerable<JsonPlace> from, string[] steps) =>
        steps.Aggregate(from, (places, step) => places.SelectMany(p => p.Kind != JsonPlaceKind.Object ? []
            : step == "*" ? p.Items
            : p.Member(step) is { } member ? [member] : Enumerable.Empty<JsonPlace>()));

    private sealed record Waiting(string Path, string? Value, string Part, string Do)
    {
        public bool IsAskedAt(JsonPlace place) => Value switch
        {
            null => place.Kind switch
            {
                JsonPlaceKind.Blank => false,
                JsonPlaceKind.YesNo => place.IsYes,
                JsonPlaceKind.Object or JsonPlaceKind.List => place.Items.Count > 0,
                _ => true,
            },
            "true" => place.Kind == JsonPlaceKind.YesNo && place.IsYes,
            _ => place.Kind == JsonPlaceKind.Text && place.Text == Value,
        };
    }
}
