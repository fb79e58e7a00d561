using System.Numerics;

namespace Condyle.Tests.Rules.Poses;

/// <summary>A rig of random sentences between random nodes, with numbers that nobody should write.</summary>
internal static class HostileRig
{
    public static void Say(RigDraft rig, Random random, float[] numbers)
    {
        float Number() => numbers[random.Next(numbers.Length)];
        Vector3 Vector() => new(Number(), Number(), Number());
        T Any<T>(IReadOnlyList<T> of) => of[random.Next(of.Count)];

        var skeleton = rig.Skeleton("hostile");
        var joints = new List<Joint> { skeleton.Root("joint", at: Vector()) };
        for (var i = 0; i < 8; i++)
            joints.Add((i < 4 ? joints[^1] : Any(joints)).Child($"joint_{i % 6}", (JointRole)random.Next(3), Vector(), Quaternion.CreateFromYawPitchRoll(Number() % 7, 1, 0), random.Next(3) == 0 ? Vector() : Vector3.One));
        List<Control> controls = [.. Enumerable.Range(0, 5).Select(i => rig.Control($"control_{i}"))];
        List<Group> groups = [rig.Group("a_group"), rig.Group("b_group")];
        List<Node> nodes = [.. joints.Select(joint => (Node)joint), .. controls.Select(control => (Node)control), .. groups.Select(group => (Node)group)];
        List<Switch> switches = [controls[0].Switch("a"), controls[1].Switch("b", 0.5f)];
        foreach (var control in controls)
        {
            if (random.Next(3) == 0)
                control.Under(Any(nodes));
            if (random.Next(2) == 0)
                control.PlacedAt(Any(nodes));
        }

        for (var i = 0; i < 6; i++)
            Sentence();

        void Sentence()
        {
            switch (random.Next(7))
            {
                case 0:
                    rig.Drive(Any(nodes)).ByChannels(Any(nodes));
                    break;
                case 1:
                    rig.Drive(Any(groups)).ByMatrix(Any(nodes)).KeepingOffset();
                    break;
                case 2:
                    rig.Blend(Any(nodes)).From(Any(nodes), Any(switches)).From(Any(nodes), Any(switches).Inverse);
                    break;
                case 3:
                    rig.Space(Any(controls)).In("one", Any(nodes)).In("two", Any(nodes));
                    break;
                default:
                    Limb(rig.Chain(joints[0], joints[1 + random.Next(4)]));
                    break;
            }
        }

        void Limb(Chain chain)
        {
            var copy = chain.Copy("ik").Under(Any(groups));
            if (random.Next(2) == 0)
                rig.TwoBone(copy).Reach(Any(nodes)).Face(Any(nodes)).Stretching(Any(switches)).Softening(Number());
            else
                rig.ManyBone(copy).Reach(Any(nodes)).Face(Any(nodes));
            rig.Blend(chain).From(copy, Any(switches)).From(chain.Copy("fk"), Any(switches).Inverse);
        }
    }
}
