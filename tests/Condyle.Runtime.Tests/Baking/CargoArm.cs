using System.Numerics;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>
/// An arm with everything that makes a bake hard: joints with frames of their own, a root away from the origin, a scaled spine, a bent rest, a twist joint
/// between, a prop, IK and FK with a switch, a control that scales.
/// </summary>
internal sealed class CargoArm(int frames = 7) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var turn = new Random(frames);
        var skeleton = rig.Skeleton("cargo_arm");
        var holder = skeleton.Root("holder", JointRole.Helper, new Vector3(3, 0.25f, -1), Any(turn), new Vector3(1.5f));
        var pelvis = holder.Child("pelvis", at: new Vector3(0.1f, 0.6f, 0.05f), turned: Any(turn));
        var shoulder = pelvis.Child("shoulder_left", at: new Vector3(0.2f, 0.1f, -0.05f), turned: Any(turn));
        var twist = shoulder.Child("shoulder_twist_left", JointRole.Twist, new Vector3(0.1f, 0.05f, 0), Any(turn));
        var elbow = twist.Child("elbow_left", at: new Vector3(0.05f, 0.2f, 0.1f), turned: Any(turn));
        var wrist = elbow.Child("wrist_left", at: new Vector3(-0.2f, 0.05f, 0.15f), turned: Any(turn));
        wrist.Child("hook", JointRole.Helper, new Vector3(0, 0.1f, 0), Any(turn), new Vector3(1, 1.2f, 0.9f));

        var world = rig.Control("world").Unlock(Channels.Scale);
        var waist = rig.Control("waist").Under(world).PlacedAt(pelvis).LimitTurn(Axis.Y, -45, 60).LimitMove(Axis.Y, -0.3f, 0);
        rig.Drive(holder).ByChannels(world).KeepingOffset().WithScale();
        rig.Drive(pelvis).ByChannels(waist);

        var arm = rig.Chain(shoulder, wrist).Without(JointRole.Twist);
        var root = rig.Control("arm_root").Under(waist).PlacedAt(shoulder).Lock(Channels.Move);
        var parts = rig.Group("arm_left_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);
        var ik = arm.Copy("ik").Under(parts);
        var hand = rig.Control("hand_left").Under(world).PlacedAt(wrist);
        var pole = rig.Control("elbow_pole_left").Under(world).PlacedAt(ik.PolePoint(0.3f)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(hand).Face(pole);

        var fk = arm.Copy("fk").Under(parts);
        Node above = root;
        foreach (var joint in arm)
        {
            var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            above = control;
        }

        var fkAmount = hand.Switch("fk").AlsoOn(root);
        rig.Blend(arm).From(ik, fkAmount.Inverse).From(fk, fkAmount);
    }

    /// <summary>Lifts, and goes from IK to FK on the way.</summary>
    public static Clip Lift() => new Clip("lift_crate", seconds: 2)
        .Move("waist", at: 0).Move("waist", at: 0.8f, y: -0.2f).Move("waist", at: 2)
        .Turn("waist", at: 0).Turn("waist", at: 1.1f, x: 25, y: -40, order: TurnOrder.YXZ).Turn("waist", at: 1.9f)
        .Move("hand_left", at: 0.2f).Move("hand_left", at: 1, x: 0.1f, y: 0.15f, z: -0.05f)
        .TurnAbout("turn_elbow_left", Axis.X, (0, 0), (1.5f, 70), (2, 20))
        .Turn("turn_shoulder_left", at: 0.5f, y: 30)
        .Switch("hand_left.fk", (0.9f, 0), (1.3f, 1));

    public static CompiledRig Compiled(int frames = 7) => RigCompiler.Compile(Rig.Build(new CargoArm(frames)));

    private static Quaternion Any(Random random) => Quaternion.Normalize(new Quaternion(Next(random), Next(random), Next(random), Next(random)));

    private static float Next(Random random) => random.NextSingle() - 0.5f;
}
