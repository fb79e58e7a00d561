using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R18;

/// <summary>An angle about +Y, in degrees.</summary>
public readonly struct Bearing(float degrees) : IEquatable<Bearing>
{
    public float Degrees { get; } = degrees;

    public float Radians => Degrees * MathF.PI / 180f;

    public static Bearing operator +(Bearing a, Bearing b) => new((a.Degrees + b.Degrees) % 360f);

    public static Bearing operator -(Bearing a) => new(360f - a.Degrees);

    public static Bearing operator *(Bearing a, int n) => new(a.Degrees * n % 360f);

    public static Bearing operator /(Bearing a, int n) => new(a.Degrees / n);

    public static Vector3 operator *(float length, Bearing b) => new(length * MathF.Sin(b.Radians), 0, length * MathF.Cos(b.Radians));

    public static bool operator ==(Bearing a, Bearing b) => a.Equals(b);

    public static bool operator !=(Bearing a, Bearing b) => !(a == b);

    public static bool operator >(Bearing a, Bearing b) => a.Degrees > b.Degrees;

    public static bool operator <(Bearing a, Bearing b) => a.Degrees < b.Degrees;

    public static implicit operator Bearing(float degrees) => new(degrees);

    public static explicit operator int(Bearing b) => (int)MathF.Round(b.Degrees);

    public bool Equals(Bearing other) => MathF.Abs(Degrees - other.Degrees) < 1e-4f;

    public override bool Equals(object? obj) => obj is Bearing b && Equals(b);

    public override int GetHashCode() => 0;

    public override string ToString() => $"{(int)this:000}";
}

/// <summary>A weight that knows how it is said.</summary>
public readonly struct Named(string word, Weight weight)
{
    public string Word => word;

    public Weight Weight => weight;

    public static Named operator !(Named n) => new("no_" + n.Word, n.Weight.Inverse);

    public static Named operator &(Named a, Named b) => new($"{a.Word}_and_{b.Word}", a.Weight * b.Weight);

    public static Named operator |(Named a, Named b) => new($"{a.Word}_or_{b.Word}", a.Weight + b.Weight);
}

public sealed class Octopus : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var mantle = rig.Skeleton("octopus").Root("mantle", at: Vector3.UnitY * 0.3f);
        var body = rig.Control("body").PlacedAt(mantle);
        rig.Drive(mantle).ByChannels(body);
        var curl = new Named("curl", body.Switch("curl"));
        var swim = new Named("swim", body.Switch("swim"));

        Bearing step = new Bearing(360) / 8;
        for (var n = 0; n < 8; n++)
        {
            Bearing bearing = step * n + 22.5f;
            var joint = mantle;
            Node curled = body, swimming = body, plain = body;
            for (var k = 1; k <= 4; k++)
            {
                var at = (0.14f / k) * bearing;
                joint = joint.Child($"arm{bearing}_{k}", at: at - Vector3.UnitY * (0.02f * k));
                curled = rig.Control($"curl_{joint}").Under(curled).PlacedAt(joint);
                swimming = rig.Control($"swim_{joint}").Under(swimming).PlacedAt(joint);
                plain = rig.Control($"turn_{joint}").Under(plain).PlacedAt(joint);
                Blend(rig, joint, (curled, curl & !swim), (swimming, swim), (plain, !curl & !swim));
            }
        }

        Tell(rig, curl & swim);
        Tell(rig, !curl);
    }

    private static void Blend(RigDraft rig, Joint joint, params (Node Source, Named By)[] sources)
    {
        var blend = rig.Blend(joint);
        foreach (var (source, by) in sources)
            blend.From(source, by.Weight);
    }

    private static void Tell(RigDraft rig, Named what) => rig.Label(what.Word + "_label", what.Word.Replace('_', ' ')).ShownBy(what.Weight);
}
