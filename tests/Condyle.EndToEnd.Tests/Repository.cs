using System.Reflection;

namespace Condyle.EndToEnd.Tests;

/// <summary>Where things of the repository are, and how it was built.</summary>
internal static class Repository
{
    private static readonly Assembly Tests = typeof(Repository).Assembly;

    public static string Root { get; } = FindRoot();

    /// <summary>The configuration that the tests were built in: the assemblies that they use were built in it too.</summary>
    public static string Configuration { get; } = Tests.GetCustomAttribute<AssemblyConfigurationAttribute>()!.Configuration;

    /// <summary>The packages that building the repository has fetched, so that no test fetches them again.</summary>
    public static string PackageFolder { get; } = Noted("PackageFolder");

    /// <summary>Where the SDK that built the repository keeps its compiler.</summary>
    public static string CompilerFolder { get; } = Noted("CompilerFolder");

    public static string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Noted(string key) => Tests.GetCustomAttributes<AssemblyMetadataAttribute>().Single(pair => pair.Key == key).Value!;

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("Condyle.slnx is in no folder above the tests.");
    }
}
