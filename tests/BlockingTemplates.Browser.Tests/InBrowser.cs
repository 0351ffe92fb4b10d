namespace BlockingTemplates.Browser.Tests;

// Two collections over two browsers: the tests use both cores.
[CollectionDefinition(Name)]
internal sealed class InBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in the browser";
}

[CollectionDefinition(Name)]
public sealed class InAnotherBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in another browser";
}
