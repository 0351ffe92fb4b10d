namespace BlockingTemplates.Browser.Tests;

// Two collections over two browsers: the tests use both cores.
[CollectionDefinition(Name)]
public sealed class InBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in the browser";
}
