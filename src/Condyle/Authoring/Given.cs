using Condyle.Model;

namespace Condyle;

/// <summary>Refuses what can never be right, where it is known.</summary>
internal static class Given
{
    public static void Finite(Fact<float> number, string what)
    {
        if (number.TryKnown(out var value) && !IsFinite(value))
            throw new ArgumentException($"{what} is no finite number: {Invariant.Print(value)}. Give a finite number.");
    }

    public static void Finite(Fact<System.Numerics.Vector3> vector, string what)
    {
        if (vector.TryKnown(out var value) && !(IsFinite(value.X) && IsFinite(value.Y) && IsFinite(value.Z)))
            throw new ArgumentException($"{what} is not finite: {Invariant.Print(value)}. Give finite numbers.");
    }

    public static void Range(Fact<float> from, Fact<float> to, string what)
    {
        if (from.TryKnown(out var least) && to.TryKnown(out var most) && !(IsFinite(least) && IsFinite(most) && least < most))
            throw new ArgumentException($"{what} goes from {Invariant.Print(least)} to {Invariant.Print(most)}. Give two finite numbers, the lesser first.");
    }

    public static void AnAxis(Fact<Axis> axis) => OneOf(axis, Axis.Z, "axis");

    public static void ARole(Fact<JointRole> role) => OneOf(role, JointRole.Helper, "role of a joint");

    public static void AUnit(Fact<DialUnit> unit) => OneOf(unit, DialUnit.Share, "unit of a dial");

    public static void AShape(Fact<ControlShape> shape) => OneOf(shape, ControlShape.Box, "shape of a control");

    public static void ATint(Fact<Tint> tint) => OneOf(tint, Tint.White, "tint");

    // The members of each count from zero without a gap, so that no call has to look them up.
    private static void OneOf<T>(Fact<T> choice, T last, string what)
        where T : struct, Enum
    {
        if (choice.TryKnown(out var value) && (Comparer<T>.Default.Compare(value, default) < 0 || Comparer<T>.Default.Compare(value, last) > 0))
            throw new ArgumentException($"{value:D} is no {what}. Give {string.Join(", ", Enum.GetNames(typeof(T)).Take(Enum.GetNames(typeof(T)).Length - 1))} or {last}.");
    }

    public static void Limits(Fact<Axis> axis, Fact<float> from, Fact<float> to, string what)
    {
        AnAxis(axis);
        if ((from.TryKnown(out var least) && float.IsNaN(least)) || (to.TryKnown(out var most) && float.IsNaN(most)))
            throw new ArgumentException($"{what} is limited by what is no number. Give two numbers, the lesser first; an infinite one leaves that end open.");
    }

    public static void ChannelsOfANode(Fact<Channels> channels)
    {
        if (channels.TryKnown(out var value) && (value & ~Channels.All) != Channels.None)
            throw new ArgumentException($"{value} names a channel that no node has. Give moves, turns or scales, such as Channels.Move.");
    }

    public static Side ASide(Side? side, string what) =>
        side ?? throw new ArgumentNullException(nameof(side), $"{what} was given null for its side. Give it Side.Left or Side.Right.");

    public static JointSet JointsOfTwist(JointSet? joints) =>
        joints ?? throw new ArgumentNullException(nameof(joints), "A twist was given null for its joints. Give it a set of joints, or leave the twist out.");

    public static BodySpaces Spaces(BodySpaces? spaces) =>
        spaces ?? throw new ArgumentNullException(nameof(spaces), "Spaces were given null for what there is to ride. Give them new BodySpaces { World = … } with the hips, the chest or the head.");

    public static BipedJoints Joints(BipedJoints? joints)
    {
        if (joints is null)
            throw new ArgumentNullException(nameof(joints), "A biped was given null for its joints. Give it new BipedJoints { … } with the skeleton's joints.");
        if (joints.Fingers?.All(finger => finger is { Left: not null, Right: not null }) != true)
            throw new ArgumentNullException(nameof(joints), "A biped was given null for the joints of its fingers. Give it a set of joints on each side for each finger, or leave Fingers out.");
        return joints;
    }

    public static void APart(Text name, string what, string example) => AName(name, what, example, "so its controls would have none of their own");

    public static void AName(Text name, string what, string example, string soWhat = "by which it could be told from others")
    {
        if (name.TryKnown(out var known) && known.Length == 0)
            throw new ArgumentException($"{what} was given no name, {soWhat}. Give it one, such as \"{example}\".", nameof(name));
    }

    public static void AReason(Text rule, Text because)
    {
        if (because.TryKnown(out var known) && string.IsNullOrWhiteSpace(known))
            throw new ArgumentException($"{rule} is accepted without a reason. Say why the team means it so.", nameof(because));
    }

    public static void Above(Fact<float> number, string what)
    {
        Finite(number, what);
        if (number.TryKnown(out var value) && value <= 0)
            throw new ArgumentException($"{what} is {Invariant.Print(value)}. Give metres above zero.");
    }

    public static void Writable(Fact<Channels> channels)
    {
        if (!channels.TryKnown(out var value))
            return;
        if (value == Channels.None || (value & ~Channels.All) != Channels.None)
            throw new ArgumentException($"{value} names no channel to write. Give moves, turns or scales, such as Channels.Move.");
        if ((value & Channels.Turn) is not (Channels.None or Channels.Turn))
            throw new ArgumentException($"{value} holds a part of the rotation, which is written whole. Give Channels.Turn, or leave the rotation out.");
    }

    public static bool IsFinite(float value) => !float.IsNaN(value) && !float.IsInfinity(value);
}
