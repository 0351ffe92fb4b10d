namespace BlockingTemplates.Cli.Commands;

/// <summary>What the command line asks of a packet beside the project file.</summary>
/// <param name="Measured">What the printer check measured, as written, or null.</param>
/// <param name="PictureOnly">Whether only the overview is wanted.</param>
internal sealed record PacketWish(string? Measured = null, bool PictureOnly = false);
