namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How an equilibrium is sought.</summary>
public sealed record EquilibriumSettings
{
    /// <summary>Greatest out-of-balance force over the cloth's forces, and pin error over the piece's size.</summary>
    public double Tolerance { get; init; } = 1e-9;

    /// <summary>Most Newton steps.</summary>
    public int MostSteps { get; init; } = 200;

    /// <summary>Cancelled by the caller once the time for the answer is up: the search then ends with the best so far. Never, unless given.</summary>
    public CancellationToken TimeIsUp { get; init; }

    /// <summary>The share k of <see cref="SlackStay"/>.</summary>
    public double SlackShare { get; init; } = 1e-5;

    /// <summary>
    /// Whether to find, where some cloth is not taut, how the answer would change with the even shape of
    /// <see cref="SlackStay"/>, to see which places the cloth itself determines. (A smaller share k would not show it: where
    /// cloth is slack all round, the stay alone decides, however weak.)
    /// </summary>
    public bool TrySlack { get; init; }
}
