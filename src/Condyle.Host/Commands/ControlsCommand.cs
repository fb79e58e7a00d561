using Condyle.Host.Catalogue;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Writes the controls of rigs as nodes, for an animator.</summary>
internal sealed class ControlsCommand(Surroundings surroundings)
{
    public int Run(string? rig, string folder, string? skeleton)
    {
        var entries = RigCatalogue.Of(surroundings).Choose(rig);
        if (skeleton is not null && entries.Count > 1)
            throw new BadInputException("--skeleton", $"it is the delivered file of one rig, and there are {entries.Count}", "Say which with --rig");
        var isGood = true;
        foreach (var entry in entries)
            isGood &= TryWrite(entry, folder, skeleton, isAsked: rig is not null);
        return isGood ? ExitCode.Ok : ExitCode.Failed;
    }

    private bool TryWrite(RigEntry entry, string folder, string? skeleton, bool isAsked)
    {
        var delivered = entry.FindSkeleton(surroundings, skeleton);
        if (delivered is null && isAsked)
            throw new BadInputException($"rig '{entry.Name}'", "it isn't known which file its skeleton was delivered in", "Put [SkeletonFile(\"...\")] on its definition, or give --skeleton FILE");
        if (delivered is null)
        {
            surroundings.Output.WriteLine($"{entry.Name}: not written, it names no delivered file");
            return true;
        }

        var found = CheckedRig.Of(entry);
        if (found.Compiled is not { } compiled)
        {
            surroundings.Error.WriteLine($"error: {entry.Name}: not written, {found.Failure ?? "it has findings that are errors: run check to see them"}");
            return false;
        }

        var output = Path.Combine(folder, entry.Name.ToLowerInvariant() + "_controls.glb");
        ControlsFile.Write(compiled, delivered, output);
        surroundings.Output.WriteLine($"{entry.Name}: wrote {output}, {(compiled.Controls.Count == 1 ? "1 control" : $"{compiled.Controls.Count} controls")}");
        return true;
    }
}
