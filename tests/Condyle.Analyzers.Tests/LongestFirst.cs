using Condyle.Analyzers.Tests.Broken;
using Condyle.Analyzers.Tests.Generated;
using Condyle.Analyzers.Tests.Reading.Bounds;
using Condyle.Analyzers.Tests.Reading.HalfTyped;
using Condyle.Analyzers.Tests.Unseen;
using Xunit.Abstractions;

[assembly: TestCollectionOrderer("Condyle.Analyzers.Tests.LongestFirst", "Condyle.Analyzers.Tests")]

namespace Condyle.Analyzers.Tests;

/// <summary>Begins with the classes that take longest, so that no core waits at the end for one of them to finish on another.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly List<string> Longest =
        [.. new[] { typeof(HalfTypedTests), typeof(CancellationTests), typeof(BrokenRigTests), typeof(UnseenRigTests), typeof(DeepCodeTests), typeof(GeneratedProgramTests) }.Select(type => type.FullName!)];

    /// <inheritdoc/>
    public IEnumerable<ITestCollection> OrderTestCollections(IEnumerable<ITestCollection> testCollections) =>
        testCollections.OrderByDescending(collection => Longest.Exists(name => collection.DisplayName.EndsWith(name, StringComparison.Ordinal)));
}
