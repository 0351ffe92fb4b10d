namespace BlockingTemplates.Engine.Fabrics;

/// <summary>How much of the cloth is computed, who is told, and what ends it.</summary>
public sealed record Computation
{
    /// <summary>Everything, until it is done.</summary>
    public static Computation Whole { get; } = new();

    /// <summary>Geometry alone: pins by the usual spacing, nothing of the cloth.</summary>
    public static Computation GeometryOnly { get; } = new() { WithCloth = false, WithEnds = false };

    /// <summary>Whether the cloth is computed, where the piece was measured unblocked.</summary>
    public bool WithCloth { get; init; } = true;

    /// <summary>Whether the soft and the stiff end of the material are computed too.</summary>
    public bool WithEnds { get; init; } = true;

    /// <summary>Told how far it is; may be told from several threads.</summary>
    public IProgress<ComputingStep>? Progress { get; init; }

    /// <summary>Ends it with an <see cref="OperationCanceledException"/>.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Cancelled once the time for the answer is up: it then ends with the best so far.</summary>
    public CancellationToken TimeIsUp { get; init; }

    /// <summary>Whether the time is up.</summary>
    public bool IsTimeUp => TimeIsUp.IsCancellationRequested;

    /// <summary>Tells how far it is.</summary>
    public void Tell(string doing, double part) => Progress?.Report(new(doing, part));
}
