using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R18;

/// <summary>An angle as riggers type it.</summary>
public readonly record struct Degrees(float Value) : IComparable<Degrees>
{
    public static Degrees Full => new(360);

    public float Radians => Value * MathF.PI / 180f;

    public static Degrees operator +(Degrees a, Degrees b) => new(a.Value + b.Value);

    public static Degrees operator -(Degrees a) => new(-a.Value);

    public static Degrees operator *(Degrees a, int times) => new(a.Value * times);

    public static Degrees operator /(Degrees a, int parts) => new(a.Value / parts);

    public static bool operator <(Degrees a, Degrees b) => a.CompareTo(b) < 0;

    public static bool operator >(Degrees a, Degrees b) => a.CompareTo(b) > 0;

    public static implicit operator Degrees(int value) => new(value);

    public static implicit operator float(Degrees degrees) => degrees.Value;

    public int CompareTo(Degrees other) => Value.CompareTo(other.Value);
}

/// <summary>A length; millimetres on the drawing, metres in the rig.</summary>
public readonly struct Length : IEquatable<Length>
{
    private readonly int micrometres;

    private Length(int micrometres) => this.micrometres = micrometres;

    public float Metres => micrometres / 1_000_000f;

    public static Length Mm(int value) => new(checked(value * 1000));

    public static Length operator +(Length a, Length b) => new(a.micrometres + b.micrometres);

    public static Length operator -(Length a) => new(-a.micrometres);

    public static Length operator *(Length a, float by) => new((int)MathF.Round(a.micrometres * by));

    public static Vector3 operator ^(Length a, Vector3 direction) => a.Metres * direction;

    public static bool operator ==(Length a, Length b) => a.Equals(b);

    public static bool operator !=(Length a, Length b) => !(a == b);

    public bool Equals(Length other) => micrometres == other.micrometres;

    public override bool Equals(object? obj) => obj is Length other && Equals(other);

    public override int GetHashCode() => micrometres.GetHashCode();

    public override string ToString() => micrometres % 1000 == 0 ? $"{micrometres / 1000}mm" : $"{micrometres}um";
}

/// <summary>A place about a drum's axis: how far out, how far round, how far along.</summary>
public readonly record struct Round(Length Out, Degrees Around, Length Along)
{
    public static implicit operator Vector3(Round at) =>
        new(at.Along.Metres, at.Out.Metres * MathF.Cos(at.Around.Radians), at.Out.Metres * MathF.Sin(at.Around.Radians));

    public static explicit operator Quaternion(Round at) => Quaternion.CreateFromAxisAngle(Vector3.UnitX, at.Around.Radians);

    public static Round operator >>(Round at, Degrees by) => at with { Around = at.Around + by };
}

/// <summary>The anchor windlass: a drum of whelps, a brake with its lever, a pawl, and the cable over it.</summary>
public sealed class AnchorWindlass : IRigDefinition
{
    private const int Whelps = 6;
    private static readonly Length Radius = Length.Mm(320);

    public void Define(RigDraft rig)
    {
        var bed = rig.Skeleton("anchor_windlass").Root("bed", JointRole.Helper);
        var drum = bed.Child("drum", at: Length.Mm(600) ^ Vector3.UnitY);
        var windlass = rig.Control("windlass");
        rig.Drive(bed).ByChannels(windlass);
        var heave = Limited(rig.Control("heave").Under(windlass).PlacedAt(drum).Lock(Channels.All), -Degrees.Full * 4, Degrees.Full * 4);
        rig.Drive(drum).ByChannels(heave);

        var whelp = new Round(Radius, 0, Length.Mm(0));
        for (Degrees turn = 0; turn < Degrees.Full; turn += Degrees.Full / Whelps)
        {
            var at = whelp >> turn;
            var joint = drum.Child($"whelp_{turn.Value:000}", at: at, turned: (Quaternion)at);
            rig.Drive(joint).ByChannels(rig.Control($"wear_{turn.Value:000}").Under(heave).PlacedAt(joint).LimitMove(Axis.Y, -0.02f, 0));
        }

        var brake = bed.Child("brake_lever", at: (Vector3)new Round(Length.Mm(500), 60, -Length.Mm(450)));
        rig.Drive(brake).ByChannels(Limited(rig.Control("brake").Under(windlass).PlacedAt(brake).Lock(Channels.Move), -45, 10));

        var pawl = bed.Child("pawl", at: (Vector3)new Round(Radius + Length.Mm(80), 135, Length.Mm(0)));
        var (lifted, dropped) = (Carried(rig, "pawl_lifted", windlass, pawl), Carried(rig, "pawl_dropped", heave, pawl));
        var hold = windlass.Switch(nameof(pawl) + "_hold");
        Weight free = hold.Inverse;
        rig.Blend(pawl).From(lifted, free).From(dropped, 1f * hold + 0f);

        var cable = new List<Joint> { bed.Child("cable_0", at: Length.Mm(900) ^ Vector3.UnitY) };
        Node above = windlass;
        foreach (var (index, fall) in new (int, Length)[] { (1, Length.Mm(180)), (2, Length.Mm(260)), (3, Length.Mm(260) * 1.5f) })
        {
            cable.Add(cable[^1].Child($"cable_{index}_{fall}", at: new Vector3(0, -fall.Metres, (fall == Length.Mm(180) ? Radius : Length.Mm(40)).Metres)));
            var sway = Limited(rig.Control($"sway_{index}").Under(above).PlacedAt(cable[index]), -20 * index, 20 * index);
            rig.Drive(cable[index]).ByChannels(sway);
            above = sway;
        }
    }

    private static Control Limited(Control control, Degrees from, Degrees to) =>
        to > from ? control.Unlock(Channels.TurnX).LimitTurn(Axis.X, from, to) : throw new ArgumentException($"{from} isn't below {to}.", nameof(from));

    private static Group Carried(RigDraft rig, string name, Control on, Joint at) => rig.Group(name).Under(on).PlacedAt(at);
}
