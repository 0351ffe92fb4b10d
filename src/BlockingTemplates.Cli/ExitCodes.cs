namespace BlockingTemplates.Cli;

/// <summary>What the program answers to the shell.</summary>
public static class ExitCodes
{
    /// <summary>Done; notes may have been told.</summary>
    public const int Done = 0;

    /// <summary>The project has problems; nothing was written.</summary>
    public const int Problems = 1;

    /// <summary>The command line was used wrongly.</summary>
    public const int WrongUse = 2;

    /// <summary>A file could not be read or written.</summary>
    public const int FileTrouble = 3;
}
