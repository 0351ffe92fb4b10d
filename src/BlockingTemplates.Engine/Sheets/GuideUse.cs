namespace BlockingTemplates.Engine.Sheets;

/// <summary>How the taped guide is used.</summary>
public enum GuideUse
{
    /// <summary>Laid on dry mats, marks pricked or pinned through, paper taken away.</summary>
    Prick,

    /// <summary>Dry paper left under clear film.</summary>
    Film,

    /// <summary>Inside cut away; the cloth touches no paper.</summary>
    Frame,
}
