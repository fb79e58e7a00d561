using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>
/// Limits what animators turn to what a human can do. A range counts from rest about a direction of the body, and is set on the joint's own axis that lies along it;
/// where none does, the joint stays free about it.
/// </summary>
/// <remarks>Angles in degrees; common practice, no source.</remarks>
internal sealed class HumanLimits(RigDraft rig, PlaceId place)
{
    private const double ClearBend = 3;

    public void Spine(Control turn, Joint joint) => Turn(turn, joint, (Vector3d.UnitX, -20, 45), (Vector3d.UnitY, -30, 30), (Vector3d.UnitZ, -25, 25));

    public void Hips(Control hips, Joint joint) => Turn(hips, joint, (Vector3d.UnitX, -30, 30), (Vector3d.UnitY, -30, 30), (Vector3d.UnitZ, -20, 20));

    public void Neck(Control turn, Joint joint) => Turn(turn, joint, (Vector3d.UnitX, -30, 35), (Vector3d.UnitY, -35, 35), (Vector3d.UnitZ, -25, 25));

    public void Head(Control turn, Joint joint) => Turn(turn, joint, (Vector3d.UnitX, -40, 35), (Vector3d.UnitY, -45, 45), (Vector3d.UnitZ, -25, 25));

    public void Collar(Control turn, Joint joint, Side side) =>
        Turn(turn, joint, (Vector3d.UnitX, -20, 30), (Vector3d.UnitY * -side.Sign, -20, 30), (Vector3d.UnitZ * side.Sign, -10, 35));

    public void Arm(Limb arm)
    {
        Root(arm);
        var (shoulder, elbow, wrist) = (arm.Bones[0], arm.Bones[1], arm.Bones[2]);
        var (upper, lower) = (Along(shoulder, elbow), Along(elbow, wrist));
        var raised = Degrees(-Vector3d.UnitY, upper);
        Turn(arm.Turns[0], shoulder, (Out(upper, arm.Side), -90, 90), (Vector3d.UnitZ * arm.Side.Sign, -20 - raised, 170 - raised), (Forwards(upper), -45, 130));
        Bend(arm.Turns[1], elbow, upper, lower, Forwards(upper), -5, 145);
        Turn(arm.Turns[2], wrist, (Out(lower, arm.Side), -85, 85), (Vector3d.UnitZ * arm.Side.Sign, -75, 75), (Forwards(lower), -75, 75));
    }

    public void Leg(Limb leg)
    {
        Root(leg);
        var (hip, knee, ankle) = (leg.Bones[0], leg.Bones[1], leg.Bones[2]);
        var (upper, lower) = (Along(hip, knee), Along(knee, ankle));
        Turn(leg.Turns[0], hip, (Out(upper, leg.Side), -40, 40), (Vector3d.UnitZ * leg.Side.Sign, -25, 45), (Forwards(upper), -25, 120));
        Bend(leg.Turns[1], knee, upper, lower, Forwards(upper) is { } forwards ? -forwards : null, -5, 140);
        Turn(leg.Turns[2], ankle, (Vector3d.UnitX, -25, 45), (Vector3d.UnitY, -20, 20), (Vector3d.UnitZ, -25, 25));
    }

    public void Toes(Control turn, Joint joint) => Turn(turn, joint, (Vector3d.UnitX, -60, 30), (Vector3d.UnitY, -10, 10), (Vector3d.UnitZ, -10, 10));

    private void Root(Limb limb)
    {
        foreach (var axis in new[] { Axis.X, Axis.Y, Axis.Z })
            limb.Root.LimitMove(axis, -0.04f, 0.04f, place);
    }

    /// <summary>About the one axis of a bend, as far as the bend at rest leaves; the others are locked.</summary>
    private void Bend(Control turn, Joint joint, Vector3d? upper, Vector3d? lower, Vector3d? whenStraight, double least, double most)
    {
        if (!rig.RestOf(joint).TryKnown(out var frame))
        {
            turn.Lock(Fact<Channels>.Open, place);
            Open(turn);
            return;
        }

        var atRest = Degrees(upper ?? Vector3d.Zero, lower);
        var isStraight = atRest < ClearBend;
        var axis = isStraight ? whenStraight : Vector3d.Cross(upper!.Value, lower!.Value).Direction;
        if (LocalAxis.Along(axis, frame) is not { } own)
            return;
        turn.Lock(Channels.Turn & ~(own.Axis switch { Axis.X => Channels.TurnX, Axis.Y => Channels.TurnY, _ => Channels.TurnZ }), place);
        Set(turn, own, least - (isStraight ? 0 : atRest), most - (isStraight ? 0 : atRest));
    }

    private void Turn(Control turn, Joint joint, params (Vector3d? About, double From, double To)[] ranges)
    {
        if (!rig.RestOf(joint).TryKnown(out var frame))
        {
            Open(turn);
            return;
        }

        foreach (var (about, from, to) in ranges)
        {
            if (LocalAxis.Along(about, frame) is { } own)
                Set(turn, own, from, to);
        }
    }

    // What rests beyond a human's range, as an arm that is delivered straight up does, can still go back to rest.
    private void Set(Control turn, LocalAxis own, double from, double to)
    {
        var (least, most) = ((float)Math.Min(0, Math.Round(from)), (float)Math.Max(0, Math.Round(to)));
        turn.LimitTurn(own.Axis, own.IsNegative ? -most : least, own.IsNegative ? -least : most, place);
    }

    private void Open(Control turn) => turn.LimitTurn(Fact<Axis>.Open, Fact<float>.Open, Fact<float>.Open, place);

    private Vector3d? Along(Joint from, Joint to) => rig.Towards(from, to).TryKnown(out var direction) ? direction : null;

    /// <summary>Along a bone, turned about which both sides twist outwards alike.</summary>
    private static Vector3d? Out(Vector3d? bone, Side side) => bone is { } known ? known * side.Sign : null;

    /// <summary>About which a bone turns to the front.</summary>
    private static Vector3d? Forwards(Vector3d? bone) => bone is { } known ? Vector3d.Cross(known, Vector3d.UnitZ).Direction : null;

    private static double Degrees(Vector3d from, Vector3d? to) =>
        to is { } known ? Math.Acos(Math.Max(-1, Math.Min(1, Vector3d.Dot(from, known)))) * 180 / Math.PI : 0;
}
