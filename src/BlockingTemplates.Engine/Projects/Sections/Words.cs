using System.Text;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>The words of a project file for a choice: its names in small letters, apart where they have capitals.</summary>
public static class Words
{
    /// <summary>The words of a choice.</summary>
    /// <param name="choice">An enumeration.</param>
    public static IReadOnlyList<string> Of(Type choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice == typeof(LengthUnit)
            ? [.. Enum.GetValues<LengthUnit>().Select(LengthWords.UnitOf)]
            : [.. Enum.GetNames(choice).Select(Apart)];
    }

    /// <summary>The word for one value of a choice.</summary>
    public static string For<T>(T value)
        where T : struct, Enum => Of(typeof(T))[Array.IndexOf(Enum.GetValues<T>(), value)];

    /// <summary>What a word means, or null.</summary>
    public static T? Find<T>(string word)
        where T : struct, Enum
    {
        var words = Of(typeof(T));
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] == word)
                return Enum.GetValues<T>()[i];
        }

        return null;
    }

    private static string Apart(string name)
    {
        var words = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && words.Length > 0)
                words.Append(' ');
            words.Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }
}
