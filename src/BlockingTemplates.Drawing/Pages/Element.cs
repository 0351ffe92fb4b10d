namespace BlockingTemplates.Drawing.Pages;

/// <summary>Something drawn on a page. Places are in the millimetres of the element that holds it.</summary>
public abstract record Element;
