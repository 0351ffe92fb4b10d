namespace BlockingTemplates.Fuzz;

/// <summary>Something that takes any bytes.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Seeds">Cases to begin with.</param>
/// <param name="Words">Pieces worth putting in.</param>
/// <param name="MostBytes">The longest case.</param>
/// <param name="MostSeconds">A case that takes longer is a fault.</param>
/// <param name="Check">Runs a case; throws where it breaks a rule.</param>
internal sealed record FuzzTarget(
    string Name, IReadOnlyList<byte[]> Seeds, IReadOnlyList<byte[]> Words, int MostBytes, int MostSeconds, Action<byte[]> Check);
