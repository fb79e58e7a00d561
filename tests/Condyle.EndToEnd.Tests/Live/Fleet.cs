using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Live;

/// <summary>
/// A project of 200 rigs, each in a file of its own, that share helpers in other files: what they are called is put together in one file,
/// what is said about the rig stands in another. Clean, but for one that leaves its mast bare.
/// </summary>
public sealed class Fleet : IDisposable
{
    public const int Size = 200;

    /// <summary>The helpers that say something about the rig.</summary>
    public const string Helpers = "Fittings.cs";

    /// <summary>The helpers that put names together.</summary>
    public const string Names = "Names.cs";

    /// <summary>A file that no rig uses.</summary>
    public const string Unrelated = "Tide.cs";

    private readonly RigFolder folder = new();

    public Fleet()
    {
        Write("Fleet.csproj", """
            <Project Sdk="Microsoft.NET.Sdk">
              <Import Project="../analyzers.props" />
              <PropertyGroup>
                <TargetFramework>net10.0</TargetFramework>
                <NoWarn>$(NoWarn);CS1591</NoWarn>
                <WarningsNotAsErrors>$(WarningsNotAsErrors);CDY1001</WarningsNotAsErrors>
              </PropertyGroup>
            </Project>
            """);
        Write(Helpers, """
            using Condyle;

            namespace Fleet;

            public static class Fittings
            {
                public static void Bollards(RigDraft rig, Control hull, int count)
                {
                    for (var i = 0; i < count; i++)
                        rig.Group(Names.Of("bollard", i)).Under(hull);
                }

                public static void Hatch(RigDraft rig, Control hull, string name) => rig.Group(name + "_group").Under(hull);

                public static void Mast(RigDraft rig, Control hull, bool isBare)
                {
                    if (isBare)
                        rig.Group("mast").Under(hull);
                }
            }
            """);
        Write(Names, """
            namespace Fleet;

            public static class Names
            {
                public static string Of(string part, int number) => $"{part}_{number}_group";
            }
            """);
        Write(Unrelated, """
            namespace Fleet;

            public static class Tide
            {
                public static double Height(double hour) => System.Math.Sin(hour / 12.4);
            }
            """);
        for (var number = 0; number < Size; number++)
            Write(Rig(number), RigSource(number, isBare: number == Bare));
    }

    /// <summary>The number of the rig that leaves its mast bare: later than those that are read when a helper is edited live.</summary>
    public static int Bare => Size - 50;

    public string Folder => folder.PathTo("Fleet");

    public string ProjectFile => Path.Combine(Folder, "Fleet.csproj");

    public static string Rig(int number) => $"Barge{number:000}.cs";

    public string Build() => DotNet.Run(Folder, "build", "--no-incremental");

    public void Dispose() => folder.Dispose();

    private void Write(string file, string text) => folder.Write(Path.Combine("Fleet", file), text);

    private static string RigSource(int number, bool isBare) => $$"""
        using Condyle;

        namespace Fleet;

        public sealed class Barge{{number:000}} : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var hull = rig.Control("hull");
                rig.Group("hold_group").Under(hull);
                Fittings.Bollards(rig, hull, {{(number % 4) + 1}});
                Fittings.Hatch(rig, hull, "hatch");
                Fittings.Mast(rig, hull, isBare: {{(isBare ? "true" : "false")}});
            }
        }
        """;
}
