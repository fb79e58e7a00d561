using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Writes the controls of rigs as nodes, for an animator.</summary>
internal sealed class ControlsCommand(Surroundings surroundings)
{
    public int Run(string? rig, string place, string? skeleton, IReadOnlyList<string> clips, bool json)
    {
        var entries = RigCatalogue.Of(surroundings).Choose(rig);
        if (skeleton is not null && entries.Count > 1)
            throw new BadInputException("--skeleton", $"it is the delivered file of one rig, and there are {entries.Count}", "Say which with --rig");
        if (clips.Count > 0 && entries.Count > 1)
            throw new BadInputException("--clip", $"clips are of one rig, and there are {entries.Count}", "Say which with --rig");
        OutputPlace.CheckHolds(place, entries.Count);
        List<WrittenControls> written = [.. entries.Select(entry => Write(entry, place, skeleton, clips, isAsked: rig is not null))];
        if (json)
            JsonReport.Write(surroundings.Output, new { rigs = written });
        else
            written.ForEach(Show);
        return written.All(one => !one.Failed) ? ExitCode.Ok : ExitCode.Failed;
    }

    private WrittenControls Write(RigEntry entry, string place, string? skeleton, IReadOnlyList<string> clips, bool isAsked)
    {
        var delivered = isAsked ? entry.NeedSkeleton(surroundings, skeleton) : entry.FindSkeleton(surroundings, skeleton);
        if (delivered is null)
            return new(entry.Name, null, 0, "it names no delivered file", Failed: false);
        var found = CheckedRig.Of(entry);
        if (found.Compiled is not { } compiled)
            return new(entry.Name, null, 0, found.Failure ?? "it has findings that are errors: run check to see them", Failed: true);
        var output = OutputPlace.Of(place, entry.Name.ToLowerInvariant() + "_controls.glb");
        OutputPlace.CheckLoses(output, delivered);
        ControlsFile.Write(compiled, delivered, output, clips.Count == 0 ? [] : Chosen(clips, entry.ClipsWithRange(compiled)));
        return new(entry.Name, output, compiled.Controls.Count, null, Failed: false);
    }

    private static List<Clip> Chosen(IReadOnlyList<string> asked, ProjectClips known)
    {
        AskedClips.Check(asked, [known]);
        return AskedClips.Among(asked, known);
    }

    private void Show(WrittenControls written)
    {
        if (written.Failed)
            surroundings.TellError($"{written.Rig}: not written, {written.Reason}");
        else if (written.File is null)
            surroundings.Tell($"{written.Rig}: not written, {written.Reason}");
        else
            surroundings.Tell($"{written.Rig}: wrote {written.File}, {(written.Controls == 1 ? "1 control" : $"{written.Controls} controls")}");
    }

    private sealed record WrittenControls(string Rig, string? File, int Controls, string? Reason, bool Failed);
}
