namespace BlockingTemplates.Output.Packets;

/// <summary>What writing a packet did to its folder.</summary>
/// <param name="Written">Full paths of the files written, in the order given.</param>
/// <param name="Removed">Names of files of an earlier run that this one has no more and that were removed.</param>
/// <param name="LeftAlone">Names of files of an earlier run that this one has no more but that were changed since, and so were kept.</param>
public sealed record PacketOutcome(IReadOnlyList<string> Written, IReadOnlyList<string> Removed, IReadOnlyList<string> LeftAlone);
