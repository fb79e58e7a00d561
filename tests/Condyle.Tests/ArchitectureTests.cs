using System.Xml.Linq;

namespace Condyle.Tests;

/// <summary>The arrows between the parts go one way.</summary>
public class ArchitectureTests
{
    private static readonly string Root = FindRoot();

    [Theory]
    [InlineData("Condyle")]
    [InlineData("Condyle.Analyzers", "Condyle")]
    [InlineData("Condyle.CodeFixes", "Condyle.Analyzers")]
    [InlineData("Condyle.Runtime", "Condyle")]
    [InlineData("Condyle.Host", "Condyle.Runtime")]
    public void A_project_refers_only_to_the_one_before_it(string project, params string[] allowed)
    {
        var file = XDocument.Load(Path.Combine(Root, "src", project, project + ".csproj"));
        var references = file.Descendants("ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value));

        Assert.Equal(allowed, references);
    }

    [Theory]
    [InlineData("Model", "Rules", "Evaluation", "Recipes")]
    [InlineData("Naming", "Rules", "Evaluation", "Recipes")]
    [InlineData("Evaluation", "Rules", "Recipes")]
    public void The_model_imports_nothing_above_it(string folder, params string[] above)
    {
        var files = Directory.GetFiles(Path.Combine(Root, "src", "Condyle", folder), "*.cs", SearchOption.AllDirectories);

        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            foreach (var other in above)
                Assert.DoesNotContain($"using Condyle.{other};", File.ReadAllText(file), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_core_and_the_runtime_know_nothing_of_the_compiler()
    {
        foreach (var project in new[] { "Condyle", "Condyle.Runtime", "Condyle.Host" })
        {
            foreach (var file in Directory.GetFiles(Path.Combine(Root, "src", project), "*.cs", SearchOption.AllDirectories).Where(file => !file.Contains("/obj/", StringComparison.Ordinal)))
                Assert.DoesNotContain("using Microsoft.CodeAnalysis", File.ReadAllText(file), StringComparison.Ordinal);
        }
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests don't run inside the repository.");
    }
}
