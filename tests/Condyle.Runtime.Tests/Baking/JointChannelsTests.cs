using System.Numerics;
using Condyle.Runtime.Kernels;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>What a bake reads off joints that lie side by side is the same, bit for bit, eight by eight and sixteen by sixteen, and whatever the number of threads.</summary>
public class JointChannelsTests
{
    private const int Moments = 37; // the last block is full in neither width

    [Fact]
    public void Samples_depend_neither_on_the_width_nor_on_the_number_of_threads() => Gen.Int.Sample(
        seed =>
        {
            var rig = RigCompiler.Compile(Rig.Examine(new RandomRig(seed)));
            var alone = SampleAlone(rig, seed);
            foreach (var (width, threads) in new[] { (8, 1), (16, 1), (8, 2), (16, 2) })
                Assert.Equal(alone, SampleTogether(rig, seed, width, threads));
        },
        iter: 20);

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void A_joint_is_near_a_place_if_it_is_so_in_every_rig(int width) => Gen.Int.Sample(
        seed =>
        {
            var choices = new RandomChoices(seed);
            var pose = new Buffers(new BufferSizes { Channels = 1 }, width);
            var (point, turn) = (choices.Vector(2), choices.Turn(MathF.PI));
            foreach (var lane in pose.Lanes)
                (lane.Moves[0], lane.Turns[0], lane.Scales[0]) = (point, turn * (choices.Chance(0.5) ? -3f : 1f), point); // of either sign, and of any length
            var joint = new JointChannels(pose, 0);
            Assert.True(joint.IsMoveNear(point, 1e-6f) && joint.IsTurnNear(turn, 1e-6f) && joint.IsScaleNear(point, 1e-6f));

            var strayed = pose.Lanes[choices.Below(width)];
            strayed.Moves[0] = point + new Vector3(0, 1e-3f, 0);
            strayed.Scales[0] = point - new Vector3(0, 0, 1e-3f);
            strayed.Turns[0] = turn * Quaternion.CreateFromAxisAngle(Vector3.UnitX, 2e-3f); // as quaternions, 1e-3 apart
            Assert.True(joint.IsMoveNear(point, 1.01e-3f) && joint.IsTurnNear(turn, 1.01e-3f) && joint.IsScaleNear(point, 1.01e-3f));
            Assert.False(joint.IsMoveNear(point, 0.99e-3f) || joint.IsTurnNear(turn, 0.99e-3f) || joint.IsScaleNear(point, 0.99e-3f));

            strayed.Moves[0] = strayed.Scales[0] = new(0, float.NaN, 0);
            strayed.Turns[0] = default;
            Assert.False(joint.IsMoveNear(point, 1e9f) || joint.IsTurnNear(turn, 1e9f) || joint.IsScaleNear(point, 1e9f));
        },
        iter: 100);

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void What_is_no_finite_number_or_no_rotation_is_told_of_any_rig(int width)
    {
        var (moves, turns) = (new Vector3[width], new Quaternion[width]);
        for (var bad = 0; bad < width; bad++)
        {
            var pose = new Buffers(new BufferSizes { Channels = 1 }, width);
            foreach (var lane in pose.Lanes)
                lane.Turns[0] = Quaternion.Identity;
            var joint = new JointChannels(pose, 0);
            Assert.True(joint.TryCopyMoves(moves) && joint.TryCopyTurns(turns) && joint.TryCopyScales(moves));
            (pose.Lanes[bad].Moves[0], pose.Lanes[bad].Turns[0], pose.Lanes[bad].Scales[0]) = (new(float.PositiveInfinity, 0, 0), default, new(0, 0, float.NaN));
            Assert.False(joint.TryCopyMoves(moves) || joint.TryCopyTurns(turns) || joint.TryCopyScales(moves));
            pose.Lanes[bad].Turns[0] = new(float.NaN, 0, 0, 1);
            Assert.False(joint.TryCopyTurns(turns.AsSpan(0, 1)));
        }
    }

    private static List<(Vector3 Move, Quaternion Turn, Vector3 Scale)> SampleAlone(CompiledRig rig, int seed)
    {
        var samples = new List<(Vector3, Quaternion, Vector3)>();
        for (var moment = 0; moment < Moments; moment++)
        {
            var alone = rig.NewInstance();
            new RandomPose(rig, seed + moment).Set(alone);
            alone.Evaluate();
            samples.AddRange(Enumerable.Range(0, rig.Joints.Count).Select(joint => (alone.JointTranslation(joint), Unit(alone.JointRotation(joint)), alone.JointScale(joint))));
        }

        return samples;
    }

    private static List<(Vector3 Move, Quaternion Turn, Vector3 Scale)> SampleTogether(CompiledRig rig, int seed, int width, int threads)
    {
        var crowd = new RigCrowd(rig, Moments, width);
        for (var moment = 0; moment < Moments; moment++)
            new RandomPose(rig, seed + moment).Set(crowd[moment]);
        crowd.Evaluate(threads);
        var (joints, samples) = (rig.Joints.Count, new (Vector3, Quaternion, Vector3)[Moments * rig.Joints.Count]);
        var (moves, turns, scales) = (new Vector3[width], new Quaternion[width], new Vector3[width]);
        for (var first = 0; first < Moments; first += width)
        {
            var count = Math.Min(width, Moments - first);
            for (var joint = 0; joint < joints; joint++)
            {
                var channels = crowd.Channels(joint, first / width);
                Assert.True(channels.TryCopyMoves(moves.AsSpan(0, count)) && channels.TryCopyTurns(turns.AsSpan(0, count)) && channels.TryCopyScales(scales.AsSpan(0, count)));
                for (var i = 0; i < count; i++)
                    samples[((first + i) * joints) + joint] = (moves[i], turns[i], scales[i]);
            }
        }

        return [.. samples];
    }

    /// <summary>As a bake makes it one: the squares of X and Y and those of Z and W are summed by themselves, each product but the first rounded with its sum.</summary>
    private static Quaternion Unit(Quaternion turn)
    {
        var square = MathF.FusedMultiplyAdd(turn.X, turn.X, turn.Y * turn.Y) + MathF.FusedMultiplyAdd(turn.Z, turn.Z, turn.W * turn.W);
        var factor = 1 / MathF.Sqrt(square);
        return new(turn.X * factor, turn.Y * factor, turn.Z * factor, turn.W * factor);
    }
}
