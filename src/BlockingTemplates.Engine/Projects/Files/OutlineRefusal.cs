namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>An outline file that cannot be used: what is wrong with it and what to do; caught where the file is asked for.</summary>
internal sealed class OutlineRefusal(string what, string @do) : Exception(what)
{
    public string Do { get; } = @do;
}
