namespace BlockingTemplates.Browser.Tests;

// See InBrowser.
[CollectionDefinition(Name)]
public sealed class InAnotherBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in another browser";
}
