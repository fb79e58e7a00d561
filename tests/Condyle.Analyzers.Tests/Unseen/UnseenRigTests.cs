using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Model;
using Condyle.Tests.Shared;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Unseen;

/// <summary>
/// Rigs by many hands that were written without sight of the reader and its tests, and that nothing was tuned to: each folder was
/// frozen before the first of it was read. They are read and run; nothing that is read may be wrong, and most of it must be known.
/// </summary>
public class UnseenRigTests(ITestOutputHelper output)
{
    /// <param name="folder">Where the programs lie.</param>
    /// <param name="rigs">How many there are.</param>
    /// <param name="percent">What was reached, in percent of the facts: it may not fall.</param>
    [Theory]
    [InlineData("First", 55, 98)]
    [InlineData("Second", 52, 97)]
    [InlineData("Third", 52, 95.8)]
    [InlineData("Fourth", 52, 99.7)]
    public void What_is_known_of_rigs_that_nobody_tuned_to_does_not_fall_and_none_of_it_is_wrong(string folder, int rigs, double percent)
    {
        var files = Directory.GetFiles(Repository.PathTo("tests", "Condyle.Analyzers.Tests", "Unseen", folder), "*.cs").Order(StringComparer.Ordinal).ToList();
        var all = new KnownShare(0, 0, []);
        foreach (var file in files)
        {
            var share = ShareOf(Path.GetFileName(file), File.ReadAllText(file), out var gaps);
            all += share;
            output.WriteLine($"{Path.GetFileName(file)}: {share.Known} of {share.All} facts known{string.Concat(gaps.Select(gap => Environment.NewLine + "    " + gap))}");
        }

        output.WriteLine($"{folder}: {files.Count} rigs, {all.Known} of {all.All} facts known: {100.0 * all.Known / all.All:F2} %");
        foreach (var wrong in all.Wrong)
            output.WriteLine(wrong);
        Assert.Equal(rigs, files.Count);
        Assert.Empty(all.Wrong);
        Assert.True(100.0 * all.Known >= percent * all.All, $"{all.Known} of {all.All} facts are known.");
    }

    private static KnownShare ShareOf(string name, string source, out IReadOnlyList<string> gaps)
    {
        var compilation = CompiledCode.Compile((name, source));
        var type = CompiledCode.Load(compilation).GetTypes().Single(type => typeof(IRigDefinition).IsAssignableFrom(type) && type is { IsAbstract: false, IsPublic: true });
        var ran = Rig.Examine((IRigDefinition)Activator.CreateInstance(type)!);
        var read = Oracle.Read(compilation, type.FullName!);
        gaps = [.. read.Paths.SelectMany(path => Oracle.Lines(path, compilation)).Where(line => line.StartsWith("gap", StringComparison.Ordinal)).Distinct()];
        var shares = read.Paths.Select(path => KnownShare.Of(ModelText.Elements(ran.Model, ran.Places.Find), Oracle.Elements(path, compilation))).ToList();
        // Of several ways the program goes one, which must be right; what is known is what the worst of them knows.
        return shares.MinBy(share => share.Known)! with { Wrong = [.. shares.MinBy(share => share.Wrong.Count)!.Wrong.Select(wrong => $"{name}: {wrong}")] };
    }
}
