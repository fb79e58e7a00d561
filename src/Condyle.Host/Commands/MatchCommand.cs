using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Matching;

namespace Condyle.Host.Commands;

/// <summary>Puts motion capture, or a clip of an older skeleton, onto a rig's controls, and writes them for an animator.</summary>
internal sealed class MatchCommand(Surroundings surroundings, MatchRequest request)
{
    private const int MostJoints = 5;

    public int Run(CancellationToken cancellation)
    {
        var entries = RigCatalogue.Of(surroundings).Choose(request.Rig);
        if (entries.Count > 1)
            throw new BadInputException("--rig", $"motion goes onto one rig, and there are {entries.Count}", "Say which with --rig");
        var delivered = entries[0].NeedSkeleton(surroundings, request.Skeleton);
        var rig = entries[0].Compile(entries[0].Examine());
        var motion = Path.GetExtension(request.File).Equals(".bvh", StringComparison.OrdinalIgnoreCase)
            ? JointMotion.FromBvh(request.File, request.Up)
            : JointMotion.FromGltf(request.File, request.Animation);
        var output = OutputPlace.Of(request.Output, $"{entries[0].Name.ToLowerInvariant()}_{OutputPlace.NameFor(motion.Name)}_controls.glb");
        OutputPlace.CheckLoses(output, delivered, request.File);
        var result = MotionMatch.Run(rig, motion, MapOf(request.Joints), request.Settings with { Choices = Before(rig, motion.Seconds) }, cancellation: cancellation);
        ControlsFile.Write(rig, delivered, output, [result.Clip]);
        if (request.Json)
            JsonReport.Write(surroundings.Output, new { rig = entries[0].Name, file = output, clip = result.Clip.Name, result.Largest, result.Joints, result.NotInRig, result.NotInMotion, result.Notes, result.NeededDials });
        else
            Show(rig, entries[0].Name, result, output);
        return ExitCode.Ok;
    }

    /// <summary>What choices and dials are set to before controls are matched.</summary>
    private Clip? Before(CompiledRig rig, float seconds)
    {
        var (choices, dials) = (ChosenOptions.Of(request.Choices, rig, seconds), TurnedDials.Of(request.Dials, rig, seconds));
        return choices is not null && dials is not null ? choices.Layer(dials) : choices ?? dials;
    }

    private static JointMap MapOf(IReadOnlyList<string> joints)
    {
        var map = new JointMap();
        foreach (var joint in joints)
        {
            if (joint.Split('=') is not [{ Length: > 0 } from, { Length: > 0 } to])
                throw new BadInputException("--joint", $"'{joint}' doesn't say which joint is which", "Write FROM=TO: the joint's name in the motion, and its name in the rig");
            map.With(from, to);
        }

        return map;
    }

    private void Show(CompiledRig rig, string name, MotionMatchResult result, string output)
    {
        var had = result.NotInMotion.Count == 0 ? "" : $", which has {result.Joints.Count - result.NotInMotion.Count} of the rig's {Say.Count(result.Joints.Count, "joint")}";
        surroundings.Tell($"{name}: {result.Clip.Name}, {Say.Seconds(result.Clip.Seconds)}, within {Say.Both(result.Largest)} of the motion{had}");
        foreach (var joint in result.Joints.Where(joint => joint.From is not null).OrderByDescending(joint => Weigh.Both(joint.Off.Metres.Value, joint.Off.Degrees.Value)).Take(MostJoints))
            surroundings.Tell($"  '{joint.Joint}' within {Say.BothAt(joint.Off)}");
        if (result.NotInRig.Count > 0)
            surroundings.Tell($"  not in the rig, unless --joint says what it is there: {Say.Names(result.NotInRig)}");
        if (result.NotInMotion.Count > 0)
            surroundings.Tell($"  not in the motion: {Say.Names(result.NotInMotion)}");
        foreach (var note in result.Notes)
            surroundings.Tell($"  {note}");
        foreach (var needed in result.NeededDials)
            surroundings.Tell($"  {Hint(needed, rig.Dials.First(dial => dial.Name == needed.Dial))}");
        surroundings.Tell($"  wrote {output}");
    }

    private static string Hint(NeededDial needed, CompiledDial dial)
    {
        var value = DialValues.Round(dial, needed.Value);
        return $"'{dial.Name}' stays at its default, {DialValues.Say(dial, dial.AtRest)}, and {DialValues.Say(dial, value)} would bring '{needed.Joint}' nearest at {Say.Seconds(needed.At)}: a match turns no dials by itself. Set it by --dial {dial.Name}={DialValues.Write(value)}";
    }
}
