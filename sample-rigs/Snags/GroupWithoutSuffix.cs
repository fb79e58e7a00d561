using System.Numerics;
using Condyle;

namespace Snags;

/// <summary>A mooring winch whose drums hang under groups that don't look like groups. CDY1001.</summary>
public sealed class GroupWithoutSuffix : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var bed = rig.Skeleton("mooring_winch").Root("bed", at: new Vector3(0, 0.2f, 0));
        var systems = rig.Group("systems_group");
        var winch = rig.Control("winch").PlacedAt(bed);
        rig.Drive(bed).ByChannels(winch);
        foreach (var side in Side.Both)
            Drum(rig, bed, side, systems, winch);
    }

    private static void Drum(RigDraft rig, Joint bed, Side side, Group systems, Control winch)
    {
        var drum = bed.Child($"drum_{side}", at: new Vector3(0.7f * side.Sign, 0.5f, 0));
        var parts = PartsOf(rig, $"drum_{side}").Under(systems).PlacedAt(winch);
        rig.Drive(parts).ByMatrix(winch);

        var haul = rig.Control($"haul_{side}").Under(parts).PlacedAt(drum).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        rig.Drive(drum).ByChannels(haul);
    }

    // The slip: "drum_left_parts" doesn't end in "_group". The script that locks groups, the filter in the scene list and the next rigger
    // all take it for a control, and somebody will key it. It stands in one place, and both drums have it.
    private static Group PartsOf(RigDraft rig, string drum) => rig.Group($"{drum}_parts");
}
