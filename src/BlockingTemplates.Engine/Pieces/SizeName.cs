namespace BlockingTemplates.Engine.Pieces;

/// <summary>One of the measurements that give a kind of piece its finished size.</summary>
/// <param name="Name">Its name in the project file: the trade's word.</param>
/// <param name="HowToTake">Where the tape goes, in a few words.</param>
public sealed record SizeName(string Name, string HowToTake);
