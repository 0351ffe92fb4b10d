namespace BlockingTemplates.Browser.Tests;

// A test that needs a browser: left out, with a word, where there is none; on a build server it has to run.
public sealed class BrowserFactAttribute : FactAttribute
{
    public const string Why = "No Chromium was found; install it (Debian: apt-get install chromium) or name it in CHROMIUM.";

    public BrowserFactAttribute()
    {
        if (IsLeftOut)
            Skip = Why;
    }

    public static bool IsLeftOut => Chromium.Path is null && Environment.GetEnvironmentVariable("CI") != "true";
}
