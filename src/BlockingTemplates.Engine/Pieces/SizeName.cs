using System.Text;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>One of the measurements that give a kind of piece its finished or its unblocked size.</summary>
/// <param name="Name">Its name in the project file: the trade's word.</param>
/// <param name="HowToTake">Where the tape goes, in a few words.</param>
public sealed record SizeName(string Name, string HowToTake)
{
    /// <summary>What lengths it may have.</summary>
    public SizeReach Reach { get; init; } = SizeReach.AboveZero;

    /// <summary>Whether it may be left out.</summary>
    public bool IsOptional { get; init; }

    /// <summary>The measurement that this one replaces, together with all others that replace it; or null.</summary>
    public string? InsteadOf { get; init; }

    /// <summary>Whether a blank form asks for it.</summary>
    public bool IsAsked => !IsOptional && InsteadOf is null;

    /// <summary>Its name as words: neckDepth is neck depth.</summary>
    public string Words
    {
        get
        {
            var words = new StringBuilder();
            foreach (var letter in Name)
                words.Append(char.IsUpper(letter) ? " " : "").Append(char.ToLowerInvariant(letter));
            return words.ToString();
        }
    }
}
