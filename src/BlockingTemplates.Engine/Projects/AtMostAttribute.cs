namespace BlockingTemplates.Engine.Projects;

/// <summary>The most characters of a text, or entries of a list, in a project file.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class AtMostAttribute(int count) : Attribute
{
    public int Count { get; } = count;
}
