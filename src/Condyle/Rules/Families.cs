namespace Condyle.Rules;

/// <summary>The families of rules: the first digit of an id.</summary>
internal static class Families
{
    private static readonly string[] Names = ["", "Names", "Blends", "Drives", "Hierarchy", "Controls", "Symmetry", "Solvers", "Poses", "Usage"];

    public static string NameOf(string id) => Names[id[3] - '0'];
}
