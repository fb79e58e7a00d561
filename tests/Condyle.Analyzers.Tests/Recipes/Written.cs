using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A recipe beside the same in primitives, on the joints of the corpus's dock worker.</summary>
internal static class Written
{
    private const string Before = """
        var joints = Harbour.Docker.In(rig);
        var systems = rig.Group("systems_group");
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);

        """;

    public static string Rig(string body, string members = "") => Oracle.Rig(Before + body, members);

    public static (string, string)[] Files(string body, string members = "") => [("rig.cs", Rig(body, members)), ("Harbour.cs", File.ReadAllText(Repository.PathTo("tests", "Condyle.Analyzers.Tests", "Corpus", "Harbour.cs")))];

    /// <summary>Both make the same rig, element for element, the program and the reading agree on it, and no rule finds anything.</summary>
    public static async Task AreTheSame(string recipe, string primitives)
    {
        Assert.Equal(LinesOf(primitives), LinesOf(recipe));
        Oracle.AgreesOn(Files(recipe));
        Assert.Empty(await FrontEnds.Read(Files(recipe)));
    }

    public static IReadOnlyList<string> LinesOf(string body)
    {
        var assembly = CompiledCode.Load(CompiledCode.Compile(Files(body)));
        var ran = Condyle.Rig.Examine((IRigDefinition)Activator.CreateInstance(assembly.GetType("TestRig")!)!);
        return ModelText.Lines(ran.Model, _ => null);
    }
}
