using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Snags;

/// <summary>A slip of the Snags project: the code that has it, the text in it that is to blame, and the code as it should be.</summary>
internal sealed record Slip(string Rule, string File, string Wrong, string Blamed, string Right)
{
    public static IReadOnlyList<Slip> All { get; } =
    [
        new("CDY2001", "BlendWithoutInverse.cs", "From(ik, amount).From(fk, amount)", "amount", "From(ik, amount.Inverse).From(fk, amount)"),
        new("CDY1001", "GroupWithoutSuffix.cs", "rig.Group($\"{drum}_parts\")", "$\"{drum}_parts\"", "rig.Group($\"{drum}_parts_group\")"),
        new("CDY3001", "MatrixOntoJoint.cs", "rig.Drive(part).ByMatrix(control)", "ByMatrix(control)", "rig.Drive(part).ByChannels(control)"),
    ];

    /// <summary>Where a build has to print it, worked out from the text of the file.</summary>
    public BuildFinding FindingIn(string source)
    {
        var at = source.IndexOf(Blamed, source.IndexOf(Wrong, StringComparison.Ordinal), StringComparison.Ordinal);
        var before = source[..at];
        return new BuildFinding(File, before.Count(character => character == '\n') + 1, at - before.LastIndexOf('\n'), Rule);
    }

    public override string ToString() => Rule;
}
