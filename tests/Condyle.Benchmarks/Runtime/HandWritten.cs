using System.Numerics;

namespace Condyle.Benchmarks.Runtime;

/// <summary>
/// The yardstick as somebody would write it for this one rig, with the rotations and vectors of the framework: what a compiled rig is measured against.
/// </summary>
internal sealed class HandWritten
{
    private readonly Frame[] controls = new Frame[Yardstick.Controls];
    private readonly Frame[] placements = new Frame[Yardstick.Controls];
    private readonly Frame[] joints = new Frame[Yardstick.Blends + Yardstick.Followers];
    private readonly Frame[] solved = new Frame[Yardstick.Limbs * 3];
    private readonly Limb[] limbs = new Limb[Yardstick.Limbs];
    private readonly Frame[] offsets = new Frame[Yardstick.Followers];

    public HandWritten()
    {
        var rest = new Frame[joints.Length];
        for (var i = 0; i < rest.Length; i++)
        {
            var local = new Frame(Yardstick.JointAt(i), Yardstick.JointTurned(i));
            rest[i] = Yardstick.JointAbove(i) is >= 0 and var above ? rest[above] * local : local;
        }

        Frame ControlRest(int control) => rest[control % rest.Length];
        for (var i = 0; i < controls.Length; i++)
            placements[i] = Yardstick.Above(i) is >= 0 and var above ? ControlRest(above).Inverse * ControlRest(i) : ControlRest(i);
        for (var limb = 0; limb < limbs.Length; limb++)
        {
            limbs[limb] = Limb.Of(
                ControlRest(Yardstick.LimbRoot(limb)).Inverse * rest[limb * 3],
                rest[limb * 3].Inverse * rest[(limb * 3) + 1],
                rest[(limb * 3) + 1].Inverse * rest[(limb * 3) + 2],
                Quaternion.Conjugate(ControlRest(Yardstick.Goal(limb)).Turn) * rest[(limb * 3) + 2].Turn);
        }

        for (var i = 0; i < offsets.Length; i++)
            offsets[i] = ControlRest(SourceOf(i)).Inverse * rest[Yardstick.Blends + i];
    }

    public Vector3[] Moves { get; } = new Vector3[Yardstick.Controls];

    public Quaternion[] Turns { get; } = [.. Enumerable.Repeat(Quaternion.Identity, Yardstick.Controls)];

    public float[] Amounts { get; } = new float[Yardstick.Blends];

    public Vector3[] JointMoves { get; } = new Vector3[Yardstick.Blends + Yardstick.Followers];

    public Quaternion[] JointTurns { get; } = new Quaternion[Yardstick.Blends + Yardstick.Followers];

    public Vector3 JointAt(int joint) => joints[joint].At;

    public void Evaluate()
    {
        for (var i = 0; i < controls.Length; i++)
        {
            var own = placements[i] * new Frame(Moves[i], Turns[i]);
            controls[i] = Yardstick.Above(i) is >= 0 and var above ? controls[above] * own : own;
        }

        for (var limb = 0; limb < limbs.Length; limb++)
        {
            limbs[limb].Solve(
                controls[Yardstick.LimbRoot(limb)],
                controls[Yardstick.Goal(limb)],
                controls[Yardstick.Pole(limb)].At,
                solved.AsSpan(limb * 3, 3));
        }

        for (var i = 0; i < Yardstick.Blends; i++)
        {
            var (first, second) = Yardstick.Sources(i);
            var (a, b) = (i < solved.Length ? solved[i] : controls[first], controls[second]);
            Write(i, new Frame(Vector3.Lerp(a.At, b.At, Amounts[i]), Quaternion.Slerp(a.Turn, b.Turn, Amounts[i])));
        }

        for (var i = 0; i < offsets.Length; i++)
            Write(Yardstick.Blends + i, controls[SourceOf(i)] * offsets[i]);
    }

    private static int SourceOf(int follower) => Yardstick.Sources(Yardstick.Blends + follower).First % Yardstick.Controls;

    private void Write(int joint, in Frame world)
    {
        joints[joint] = world;
        var local = Yardstick.JointAbove(joint) is >= 0 and var above ? joints[above].Inverse * world : world;
        JointMoves[joint] = local.At;
        JointTurns[joint] = local.Turn;
    }

    private readonly struct Frame(Vector3 at, Quaternion turn)
    {
        public readonly Vector3 At = at;
        public readonly Quaternion Turn = turn;

        public Frame Inverse
        {
            get
            {
                var back = Quaternion.Conjugate(Turn);
                return new(Vector3.Transform(-At, back), back);
            }
        }

        public static Frame operator *(in Frame outer, in Frame inner) => new(outer.At + Vector3.Transform(inner.At, outer.Turn), outer.Turn * inner.Turn);
    }

    /// <summary>Two bones and the directions that they have at rest.</summary>
    private readonly record struct Limb(Frame Root, Frame Middle, Frame Tip, Quaternion FirstAtRest, Quaternion SecondAtRest, Quaternion TipInGoal)
    {
        public static Limb Of(Frame root, Frame middle, Frame tip, Quaternion tipInGoal)
        {
            // In the root's frame.
            var (first, second) = (middle.At, Vector3.Transform(tip.At, middle.Turn));
            var line = Vector3.Normalize(first + second);
            var normal = Vector3.Normalize(Vector3.Cross(line, first));
            return new(
                root,
                middle,
                tip,
                Quaternion.Conjugate(Basis(Vector3.Normalize(first), normal)),
                Quaternion.Conjugate(Basis(Vector3.Normalize(second), normal)) * middle.Turn,
                tipInGoal);
        }

        public void Solve(in Frame parent, in Frame goal, Vector3 pole, Span<Frame> joints)
        {
            var root = parent * Root;
            var (a, b) = (Middle.At.Length(), Tip.At.Length());
            var toGoal = goal.At - root.At;
            var reach = Math.Clamp(toGoal.Length(), MathF.Abs(a - b), a + b);
            var line = Vector3.Normalize(toGoal);
            var toPole = pole - root.At;
            var side = Vector3.Normalize(toPole - (line * Vector3.Dot(toPole, line)));
            var foot = ((a * a) - (b * b) + (reach * reach)) / (2 * reach);
            var height = MathF.Sqrt(MathF.Max(0, (a * a) - (foot * foot)));
            var first = (line * foot) + (side * height);
            var second = (line * (reach - foot)) - (side * height);
            var normal = Vector3.Cross(line, side);
            joints[0] = new(root.At, Basis(Vector3.Normalize(first), normal) * FirstAtRest);
            joints[1] = new(root.At + first, Basis(Vector3.Normalize(second), normal) * SecondAtRest);
            joints[2] = new(root.At + first + second, goal.Turn * TipInGoal);
        }

        private static Quaternion Basis(Vector3 x, Vector3 y)
        {
            var z = Vector3.Cross(x, y);
            return Quaternion.CreateFromRotationMatrix(new Matrix4x4(x.X, x.Y, x.Z, 0, y.X, y.Y, y.Z, 0, z.X, z.Y, z.Z, 0, 0, 0, 0, 1));
        }
    }
}
