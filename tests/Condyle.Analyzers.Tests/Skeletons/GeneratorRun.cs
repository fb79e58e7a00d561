using System.Collections.Immutable;
using System.Text;
using Condyle.Analyzers.Skeletons;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>Runs the generator over files that exist in memory only.</summary>
internal sealed class GeneratorRun
{
    public static readonly ImmutableArray<MetadataReference> References =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetFileName(path).StartsWith("System.", StringComparison.Ordinal) || Path.GetFileName(path) is "netstandard.dll")
            .Select(path => MetadataReference.CreateFromFile(path)),
        MetadataReference.CreateFromFile(typeof(RigDraft).Assembly.Location),
    ];

    private GeneratorRun(GeneratorDriver driver, Compilation compilation)
    {
        Driver = driver;
        Compilation = compilation;
    }

    public GeneratorDriver Driver { get; }

    public Compilation Compilation { get; }

    public GeneratorRunResult Result => Driver.GetRunResult().Results.Single();

    /// <summary>The code of the one class that came out.</summary>
    public string Code => Result.GeneratedSources.Single().SourceText.ToString();

    public Diagnostic Problem => Result.Diagnostics.Single();

    public static GeneratorRun Of(string json, string path = "small.gltf", params (string Key, string Value)[] properties) =>
        Of([new Extra(path, json)], properties);

    public static GeneratorRun Of(Extra[] files, params (string Key, string Value)[] properties)
    {
        var compilation = CSharpCompilation.Create("Rigs", [], References, new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary));
        var driver = CSharpGeneratorDriver.Create(
            [new SkeletonGenerator().AsSourceGenerator()],
            files,
            CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.CSharp7_3).WithDocumentationMode(DocumentationMode.Diagnose),
            new Options(properties.ToDictionary(pair => "build_property." + pair.Key, pair => pair.Value)),
            new GeneratorDriverOptions(IncrementalGeneratorOutputKind.None, trackIncrementalGeneratorSteps: true));
        return new GeneratorRun(driver.RunGeneratorsAndUpdateCompilation(compilation, out var updated, out _), updated);
    }

    public GeneratorRun Again(Func<GeneratorDriver, GeneratorDriver> change)
    {
        var withFile = Compilation.RemoveSyntaxTrees(Compilation.SyntaxTrees);
        return new GeneratorRun(change(Driver).RunGeneratorsAndUpdateCompilation(withFile, out var updated, out _), updated);
    }

    /// <summary>Why each output of a step was what it was.</summary>
    public IEnumerable<IncrementalStepRunReason> Reasons(string step) => Result.TrackedSteps[step].SelectMany(run => run.Outputs).Select(output => output.Reason);

    private sealed class Options(Dictionary<string, string> properties) : AnalyzerConfigOptionsProvider
    {
        public override AnalyzerConfigOptions GlobalOptions { get; } = new Values(properties);

        public override AnalyzerConfigOptions GetOptions(SyntaxTree tree) => new Values([]);

        public override AnalyzerConfigOptions GetOptions(AdditionalText textFile) =>
            new Values(((Extra)textFile).Metadata.ToDictionary(pair => "build_metadata.AdditionalFiles." + pair.Key, pair => pair.Value));
    }

    private sealed class Values(Dictionary<string, string> values) : AnalyzerConfigOptions
    {
        public override bool TryGetValue(string key, out string value) => values.TryGetValue(key, out value!);
    }
}

/// <summary>A file in memory. Text that is null stands for one that can't be opened.</summary>
internal sealed class Extra(string path, string? text, params (string Key, string Value)[] metadata) : AdditionalText
{
    private readonly SourceText? source = text is null ? null : SourceText.From(text, Encoding.UTF8);

    public override string Path => path;

    public IReadOnlyList<(string Key, string Value)> Metadata { get; } = metadata.Length == 0 ? [("CondyleSkeleton", "true")] : metadata;

    public override SourceText? GetText(CancellationToken cancellationToken = default) => source;
}
