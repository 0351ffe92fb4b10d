namespace BlockingTemplates.Output.Packets;

/// <summary>A finished file of a packet.</summary>
/// <param name="Name">Its name in the folder, as <see cref="SafeFileName"/> makes them; it may stand in one folder more, <c>M/plan.json</c>.</param>
/// <param name="Bytes">What it holds.</param>
public sealed record PacketFile(string Name, ReadOnlyMemory<byte> Bytes);
