using Condyle;

namespace Quayside.Bird;

/// <summary>A tail that its control bends and a dial fans.</summary>
internal static class TailFan
{
    /// <summary>How far each feather opens beyond the one further in, in degrees.</summary>
    private const float Apart = 9;

    public static void Build(RigDraft rig, GullSkeleton joints, Control body)
    {
        var tail = rig.Control("turn_tail").Under(body).PlacedAt(joints.Tail).Lock(Channels.Move)
            .LimitTurn(Axis.X, -50, 30).LimitTurn(Axis.Y, -40, 40).LimitTurn(Axis.Z, -25, 25)
            .Shaped(ControlShape.Triangle, size: 0.14f, facing: Axis.Z).Tinted(Tint.Amber).OnLayer("tail");
        rig.Drive(joints.Tail).ByChannels(tail);

        var fan = tail.Dial("fan", from: 0, to: 1, unit: DialUnit.Share);
        foreach (var side in Side.Both)
        {
            var feathers = joints.TailFeatherJoints[side];
            for (var i = 0; i < feathers.Count; i++)
                rig.Response(fan).Key(0, 0).Key(1, -side.Sign * Apart * (i + 1)).OntoTurn(feathers[i], Axis.Z);
        }
    }
}
