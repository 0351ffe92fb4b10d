namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>What stands at a place of a file.</summary>
internal enum JsonPlaceKind
{
    Blank,
    Object,
    List,
    Text,
    Number,
    YesNo,
}
