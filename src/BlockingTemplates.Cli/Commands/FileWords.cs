using System.CommandLine.Parsing;

namespace BlockingTemplates.Cli.Commands;

/// <summary>Words of the command line that stand for files.</summary>
internal static class FileWords
{
    /// <summary>Refuses a word that looks like an option: an unknown option would else be taken for a file.</summary>
    public static void RefuseOptions(ArgumentResult files)
    {
        foreach (var word in files.Tokens.Select(t => t.Value).Where(v => v.StartsWith('-')))
            files.AddError($"There is no option {word}; a file of that name is written ./{word}.");
    }
}
