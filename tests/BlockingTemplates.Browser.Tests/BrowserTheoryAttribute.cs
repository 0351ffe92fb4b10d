namespace BlockingTemplates.Browser.Tests;

// See BrowserFact.
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute()
    {
        if (BrowserFactAttribute.IsLeftOut)
            Skip = BrowserFactAttribute.Why;
    }
}
