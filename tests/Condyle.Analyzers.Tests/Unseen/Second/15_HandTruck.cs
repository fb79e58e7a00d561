using System.Numerics;
using Condyle;

namespace Unseen.Second.R15;

// The little sack truck that the stevedore pushes. Quick one for the cutscene.
public sealed class HandTruck : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var axle = rig.Skeleton("hand_truck").Root("axle", at: new Vector3(0, 0.13f, 0));
        var frame = axle.Child("frame", at: new Vector3(0, 0.05f, 0.08f));
        var grip = frame.Child("grip", JointRole.Helper, new Vector3(0, 1.15f, -0.1f));
        var cargo = frame.Child("cargo", JointRole.Helper, new Vector3(0, 0.02f, 0.15f));

        var truck = rig.Control("truck").PlacedAt(axle);
        rig.Drive(axle).ByChannels(truck);

        // tip it back: turns about the axle, so the frame follows with an offset
        var tip = rig.Control("tip_back").Under(truck).PlacedAt(axle).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -70, 5);
        rig.Drive(frame).ByChannels(tip).KeepingOffset();

        foreach (var side in Side.Both)
        {
            var wheel = axle.Child($"wheel_{side}", at: new Vector3(0.22f * side.Sign, 0, 0));
            var roll = rig.Control($"roll_{side}").Under(truck).PlacedAt(wheel).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            rig.Drive(wheel).ByChannels(roll);

            var bumper = frame.Child($"bumper_{side}", at: new Vector3(0.18f * side.Sign, 0.02f, 0.02f));
            var bend = rig.Control($"bend_bumper_{side}").Under(tip).PlacedAt(bumper);
            bend.Lock(Channels.Move);
            rig.Drive(bumper).ByChannels(bend);
        }

        // grip and cargo are only there so the game can attach hands and crates
        foreach (var (joint, what) in new[] { (grip, "hands"), (cargo, "crate") })
        {
            var control = rig.Control($"{what}_here").Under(tip).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            rig.Label($"{what}_label", what).Under(control).ShownBy(1);
        }
    }
}
