namespace BlockingTemplates.Web;

/// <summary>How the page is started.</summary>
/// <param name="StateFolder">The folder in which work is kept; made if missing.</param>
public sealed record PageSettings(string StateFolder)
{
    /// <summary>The port tried first where none is asked for.</summary>
    public const int UsualPort = 4875;

    /// <summary>The port asked for, 0 for any free one; null for the usual one, or any free one where that is taken.</summary>
    public int? Port { get; init; }

    /// <summary>The project file to begin with, or null.</summary>
    public OpenedFile? Opened { get; init; }

    /// <summary>Whether the page answers on the home network too, to those who have the code.</summary>
    public bool Share { get; init; }

    /// <summary>Whether it opens at the part for pinning.</summary>
    public bool Pinning { get; init; }
}
