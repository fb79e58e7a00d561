using System.Numerics;

namespace Condyle.Benchmarks.Runtime;

/// <summary>
/// The rig that everything is measured on: 220 nodes, 12 deep. 138 controls with placements, four copies that two-bone IK solves, 60 joints that blend
/// two nodes each, and 10 that follow one with an offset. 1 440 numbers go in and 700 come out.
/// </summary>
/// <param name="copies">How many of it stand side by side in the rig.</param>
internal sealed class Yardstick(int copies = 1) : IRigDefinition
{
    public const int Nodes = Controls + (Limbs * 3) + Blends + Followers;
    public const int Controls = 138;
    public const int Depth = 12;
    public const int Limbs = 4;
    public const int Blends = 60;
    public const int Followers = 10;

    /// <summary>The control under which each control hangs, −1 for none.</summary>
    public static int Above(int control) => control - (Controls / Depth) is >= 0 and var above ? above : -1;

    /// <summary>The joint under which each joint hangs, −1 for none.</summary>
    public static int JointAbove(int joint) => joint < Limbs * 3
        ? joint % 3 == 0 ? -1 : joint - 1
        : joint - ((Blends + Followers) / Depth) is >= Limbs * 3 and var above ? above : -1;

    /// <summary>The controls that a joint blends; a limb's joint takes its solved copy for the first one.</summary>
    public static (int First, int Second) Sources(int joint) => (joint * 2, (joint * 2) + 1);

    public static int Goal(int limb) => 100 + limb;

    public static int Pole(int limb) => 110 + limb;

    public static int LimbRoot(int limb) => 60 + limb;

    public static Vector3 ControlAt(int control) => new(0.05f * (control % 7), 0.04f + (0.01f * (control % 5)), 0.03f * (control % 3));

    public static Vector3 JointAt(int joint) => joint < Limbs * 3
        ? (joint % 3) switch { 0 => new(0.3f * (joint / 3), 1, 0), 1 => new(0, -0.3f, 0.03f), _ => new(0, -0.28f, -0.02f) }
        : new(0.02f * (joint % 4), 0.05f, 0.01f * (joint % 5));

    public static Quaternion JointTurned(int joint) => Quaternion.CreateFromYawPitchRoll(0.1f * (joint % 5), 0.2f * (joint % 3), 0.05f * (joint % 7));

    public void Define(RigDraft rig)
    {
        for (var copy = 0; copy < copies; copy++)
            Define(rig, copy == 0 ? "" : $"{copy}_");
    }

    private static void Define(RigDraft rig, string prefix)
    {
        var skeleton = rig.Skeleton($"{prefix}yardstick");
        var joints = new List<Joint>();
        for (var i = 0; i < Blends + Followers; i++)
        {
            joints.Add(JointAbove(i) is >= 0 and var above
                ? joints[above].Child($"{prefix}joint_{i}", at: JointAt(i), turned: JointTurned(i))
                : skeleton.Root($"{prefix}joint_{i}", at: JointAt(i), turned: JointTurned(i)));
        }

        var controls = new List<Control>();
        for (var i = 0; i < Controls; i++)
        {
            var control = rig.Control($"{prefix}control_{i}").PlacedAt(joints[i % joints.Count]);
            controls.Add(Above(i) is >= 0 and var above ? control.Under(controls[above]) : control);
        }

        var solved = new Node[Limbs * 3];
        for (var limb = 0; limb < Limbs; limb++)
        {
            var copy = rig.Chain(joints[limb * 3], joints[(limb * 3) + 2]).Copy("ik").Under(controls[LimbRoot(limb)]);
            rig.TwoBone(copy).Reach(controls[Goal(limb)]).Face(controls[Pole(limb)]);
            for (var i = 0; i < 3; i++)
                solved[(limb * 3) + i] = copy.Of(joints[(limb * 3) + i]);
        }

        for (var i = 0; i < Blends; i++)
        {
            var (first, second) = Sources(i);
            var amount = controls[first].Switch("amount", 0.5f);
            rig.Blend((Node)joints[i]).From(i < solved.Length ? solved[i] : controls[first], amount.Inverse).From(controls[second], amount);
        }

        for (var i = Blends; i < Blends + Followers; i++)
            rig.Drive(joints[i]).ByChannels(controls[Sources(i).First % Controls]).KeepingOffset();
    }
}
