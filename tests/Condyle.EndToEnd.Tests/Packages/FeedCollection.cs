namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>Tests that take the packages from one feed, which is packed once.</summary>
[CollectionDefinition(Name)]
public sealed class FeedCollection : ICollectionFixture<Feed>
{
    public const string Name = "packages";
}
