using System.Numerics;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The dock worker's arms and legs flip from IK to FK and back without a jump.</summary>
public class MatchingTests
{
    private static readonly CompiledRig Rig = RigCompiler.Compile(Condyle.Rig.Build(new Stevedore()));

    [Fact]
    public void His_arms_and_legs_are_found_by_their_joints() =>
        Assert.Equal(["hip_left", "hip_right", "shoulder_left", "shoulder_right"], Rig.Limbs.Select(limb => limb.Name).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("elbow_left")]
    [InlineData("elbow_right")]
    [InlineData("knee_left")]
    [InlineData("knee_right")]
    public void Both_switches_flip_without_a_jump(string joint)
    {
        var random = new Random(7);
        var limb = Rig.Limbs[Rig.LimbIndex(joint)];
        var fk = Rig.SwitchIndex($"{Rig.Controls[limb.Goal].Name}.fk");
        for (var pose = 0; pose < 200; pose++)
        {
            var instance = Rig.NewInstance();
            foreach (var name in new[] { "body", "hips", "turn_waist", "turn_chest" })
                instance.SetTurn(Rig.ControlIndex(name), Turn(random, 0.5f));
            instance.SetTurn(limb.Goal, Turn(random, 0.7f));
            instance.SetMove(limb.Goal, Vector(random, 0.2f));
            instance.SetMove(limb.Pole!.Value, Vector(random, 0.2f));

            var solved = Worlds(instance);
            var turns = instance.MatchTurns(limb.Index);
            instance.SetSwitch(fk, 1);
            AssertSame(solved, Worlds(instance), $"{pose} to FK: {Say(turns)}");

            instance.SetTurn(limb.Goal, Quaternion.Identity);
            instance.SetMove(limb.Goal, Vector3.Zero);
            instance.SetMove(limb.Pole.Value, Vector3.Zero);
            var goal = instance.MatchGoal(limb.Index);
            instance.SetSwitch(fk, 0);
            Assert.True(turns.Holds && goal.Holds, $"{pose}: {Say(turns)}; {Say(goal)}");
            AssertSame(solved, Worlds(instance), $"{pose} to IK: {Say(goal)}");
        }
    }

    private static Matrix4x4[] Worlds(RigInstance instance)
    {
        instance.Evaluate();
        return [.. Rig.Joints.Select(joint => instance.JointWorld(joint.Index))];
    }

    private static void AssertSame(Matrix4x4[] expected, Matrix4x4[] actual, string what)
    {
        foreach (var joint in Rig.Joints)
        {
            var (was, now) = (expected[joint.Index], actual[joint.Index]);
            var metres = Vector3.Distance(was.Translation, now.Translation);
            var off = Quaternion.CreateFromRotationMatrix(was) * Quaternion.Conjugate(Quaternion.CreateFromRotationMatrix(now));
            var degrees = 2 * MathF.Atan2(new Vector3(off.X, off.Y, off.Z).Length(), MathF.Abs(off.W)) * (180 / MathF.PI);
            Assert.True(metres <= 1e-5f && degrees <= 0.01f, $"{joint.Name} in pose {what}: {metres} m, {degrees}°");
        }
    }

    private static Vector3 Vector(Random random, float size) => new Vector3(random.NextSingle() - 0.5f, random.NextSingle() - 0.5f, random.NextSingle() - 0.5f) * (2 * size);

    private static Quaternion Turn(Random random, float most) => Quaternion.CreateFromAxisAngle(Vector3.Normalize(Vector(random, 1)), most * random.NextSingle());

    private static string Say(LimbMatch match) => $"{match.Metres} m, {match.Degrees}°, {string.Join(" ", match.Notes)}";
}
