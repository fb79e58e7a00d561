namespace Condyle.Rules;

/// <summary>The families of rules: the first digit of an id.</summary>
internal static class Families
{
    private static readonly string[] Names = ["", "Names", "Blends", "Drives", "Hierarchy", "Controls", "Symmetry", "Solvers", "Pose and bake", "Usage"];

    public static string NameOf(string id) => Names[id[3] - '0'];
}
