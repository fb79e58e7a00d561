using System;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R32;

public readonly struct Degrees(float value) : IEquatable<Degrees>
{
    public float Value { get; } = value;

    public float Radians => Value * MathF.PI / 180f;

    public static Degrees operator +(Degrees a, Degrees b) => new(a.Value + b.Value);

    public static Degrees operator -(Degrees a) => new(-a.Value);

    public static Degrees operator *(Degrees a, float by) => new(a.Value * by);

    public static Degrees operator /(Degrees a, int by) => new(a.Value / by);

    public bool Equals(Degrees other) => Value == other.Value;

    public override bool Equals(object? obj) => obj is Degrees other && Equals(other);

    public override int GetHashCode() => Value.GetHashCode();
}

internal readonly struct Polar
{
    private readonly float radius;
    private readonly Degrees angle;

    public Polar(float radius, Degrees angle) => (this.radius, this.angle) = (radius, angle);

    public static Polar operator >>(Polar polar, int steps) => new(polar.radius, polar.angle + new Degrees(45) * steps);

    public static implicit operator Vector3(Polar polar) =>
        new(0f, polar.radius * MathF.Cos(polar.angle.Radians), polar.radius * MathF.Sin(polar.angle.Radians));
}

/// <summary>The hand winch: a drum with eight spokes and a two-part crank that a hand can pull round.</summary>
public class Winch : IRigDefinition
{
    private static readonly Degrees Turn = new(360);

    public void Define(RigDraft rig)
    {
        var frame = rig.Skeleton("winch").Root("frame", JointRole.Helper);
        var drum = frame.Child("drum", at: Vector3.UnitY * 0.8f);
        var first = new Polar(0.35f, new Degrees(0));
        var world = rig.Control("world");
        var spin = rig.Control("spin").Under(world).PlacedAt(drum).Lock(Channels.All & ~Channels.TurnX);

        rig.Drive(drum).ByChannels(spin);
        for (var i = 0; i < 8; i++)
        {
            var spoke = drum.Child("spoke_" + (char)('a' + i), at: first >> i, turned: Quaternion.CreateFromAxisAngle(Vector3.UnitX, (Turn / 8 * i).Radians));
            if (i % 2 == 0)
                continue;
            var bend = rig.Control("bend_" + spoke.Name).Under(spin).PlacedAt(spoke);
            bend.LimitTurn(Axis.X, (-(Turn / 36)).Value, (Turn / 36).Value);
            rig.Drive(spoke).ByChannels(bend);
        }

        var shoulder = drum.Child("crank_root", at: Vector3.UnitX * 0.4f);
        var elbow = shoulder.Child("crank_knee", at: Vector3.Transform(Vector3.UnitY * 0.3f, Quaternion.CreateFromYawPitchRoll(0, new Degrees(20).Radians, 0)));
        var grip = elbow.Child("crank_grip", at: new Vector3(0, 0.3f, -0.12f));
        var crank = rig.Chain(shoulder, grip);

        var ik = crank.Copy("ik").Under(spin);
        var handle = rig.Control("crank").Under(world).PlacedAt(grip);
        rig.TwoBone(ik).Reach(handle).Face(rig.Control("crank_pole").Under(spin).PlacedAt(crank.PolePoint(0.2f)));
        var fk = crank.Copy("fk").Under(spin);
        rig.Drive(fk.Root).ByChannels(spin).KeepingOffset();

        var slack = handle.Switch("free", 1f);
        var half = 0.5f * slack;
        rig.Blend(crank).From(ik, half + half).From(fk, slack.Inverse);
    }
}
