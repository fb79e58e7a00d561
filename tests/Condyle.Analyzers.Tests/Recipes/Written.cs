using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A recipe beside the same in primitives, on the joints of the corpus's dock worker.</summary>
internal static class Written
{
    private const string Joints = """
        var joints = Harbour.Docker.In(rig);

        """;

    private const string World = Joints + """
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");

        """;

    private const string Before = Joints + """
        var systems = rig.Group("systems_group");
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);

        """;

    public static (string, string)[] Files(string body, string members = "") => FilesOf(Before + body, members);

    /// <summary>Where nothing moves the pelvis yet.</summary>
    public static (string, string)[] FilesOnTheWorld(string body) => FilesOf(World + body, "");

    /// <summary>Where there is nothing but the skeleton.</summary>
    public static (string, string)[] FilesOnTheSkeleton(string body, string members = "") => FilesOf(Joints + body, members);

    private static (string, string)[] FilesOf(string body, string members) => [("rig.cs", Oracle.Rig(body, members)), ("Harbour.cs", File.ReadAllText(Repository.PathTo("tests", "Condyle.Analyzers.Tests", "Corpus", "Harbour.cs")))];

    /// <summary>Both make the same rig, element for element, the program and the reading agree on it, and no rule finds anything.</summary>
    public static Task AreTheSame(string recipe, string primitives, string members = "") => AreTheSame(Files(recipe, members), Files(primitives, members));

    /// <inheritdoc cref="AreTheSame(string, string, string)"/>
    public static Task AreTheSameOnTheWorld(string recipe, string primitives) => AreTheSame(FilesOnTheWorld(recipe), FilesOnTheWorld(primitives));

    private static async Task AreTheSame((string, string)[] recipe, (string, string)[] primitives)
    {
        Assert.Equal(LinesOf(primitives), LinesOf(recipe));
        Oracle.AgreesOn(recipe);
        Assert.Empty(await FrontEnds.Read(recipe));
    }

    public static Condyle.Rig Run((string, string)[] files)
    {
        var assembly = CompiledCode.Load(CompiledCode.Compile(files));
        return Condyle.Rig.Examine((IRigDefinition)Activator.CreateInstance(assembly.GetType("TestRig")!)!);
    }

    private static IReadOnlyList<string> LinesOf((string, string)[] files) => ModelText.Lines(Run(files).Model, _ => null);
}
