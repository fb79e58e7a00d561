using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A file that is to become a class, with the settings that decide what the class looks like.</summary>
internal sealed record SkeletonRequest(AdditionalText File, string ClassName, string Namespace, SkeletonNaming Naming)
{
    public string FileName => Path.GetFileName(File.Path);

    public string SkeletonName => Path.GetFileNameWithoutExtension(File.Path);

    public string HintName => ClassName + ".g.cs";

    public static SkeletonRequest? Of(AdditionalText file, AnalyzerConfigOptionsProvider options)
    {
        var ofFile = options.GetOptions(file);
        if (!string.Equals(Value(ofFile, "build_metadata.AdditionalFiles.CondyleSkeleton"), "true", StringComparison.OrdinalIgnoreCase))
            return null;
        var className = Value(ofFile, "build_metadata.AdditionalFiles.CondyleSkeletonName");
        return new SkeletonRequest(
            file,
            className.Length > 0 ? className : Identifiers.Pascal(Path.GetFileNameWithoutExtension(file.Path), whenEmpty: "Delivered") + "Skeleton",
            Identifiers.Namespace(Value(options.GlobalOptions, "build_property.RootNamespace")),
            new SkeletonNaming(Conventions.From(name => Value(options.GlobalOptions, "build_property.Condyle" + name))));
    }

    private static string Value(AnalyzerConfigOptions options, string key) => options.TryGetValue(key, out var value) ? value.Trim() : "";
}
