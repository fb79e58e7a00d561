using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle;

namespace Unseen.Third.R45;

internal static class Guard
{
    public static T NotNull<T>([NotNull] T? value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : class => value ?? throw new ArgumentNullException(name);

    public static string NotEmpty([NotNull] string? value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, name);
        return value;
    }

    public static float Positive(float value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value, name);
        return float.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "It has to be finite.");
    }

    public static Vector3 NotZero(Vector3 value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value.LengthSquared() > 1e-12f ? value : throw new ArgumentException("A bone has to have a length.", name);

    public static void That([DoesNotReturnIf(false)] bool condition, string message)
    {
        if (!condition)
            throw new InvalidOperationException(message);
    }
}

public sealed class ShipsCat : IRigDefinition
{
    private const int TailJoints = 8;
    private readonly float scale;

    public ShipsCat()
        : this(1f)
    {
    }

    public ShipsCat(float scale) => this.scale = Guard.Positive(scale);

    public void Define(RigDraft rig)
    {
        Guard.NotNull(rig);

        var skeleton = rig.Skeleton("ships_cat");
        var pelvis = skeleton.Root("pelvis", at: Scaled(0f, 0.26f, -0.12f));
        var back = Bone(pelvis, "back", Scaled(0f, 0.01f, 0.12f));
        var chest = Bone(back, "chest", Scaled(0f, 0f, 0.12f));
        var neck = Bone(chest, "neck", Scaled(0f, 0.04f, 0.06f));
        var head = Bone(neck, "head", Scaled(0f, 0.05f, 0.04f));

        var world = rig.Control("world");
        var hips = Turn(rig, pelvis, world);
        var middle = Turn(rig, back, hips);
        var ribs = Turn(rig, chest, middle);
        var nape = Turn(rig, neck, ribs);
        var face = Turn(rig, head, nape);

        foreach (var side in Side.Both)
        {
            Guard.NotNull(side);
            Turn(rig, Bone(head, $"ear_{side}", Scaled(0.03f * side.Sign, 0.04f, 0f)), face).Lock(Channels.Move);
            Limb(rig, chest, ribs, world, "fore", side, Scaled(0.05f * side.Sign, -0.03f, 0.02f), Scaled(0f, -0.1f, -0.03f), Scaled(0f, -0.11f, 0.02f));
            Limb(rig, pelvis, hips, world, "hind", side, Scaled(0.05f * side.Sign, -0.02f, -0.01f), Scaled(0f, -0.1f, 0.05f), Scaled(0f, -0.11f, -0.04f));
        }

        var tail = Tail(rig, pelvis, hips);
        Guard.That(tail.Count == TailJoints, $"The tail has {tail.Count} joints instead of {TailJoints}.");
    }

    private static Joint Bone(Joint above, string name, Vector3 at) => above.Child(Guard.NotEmpty(name), at: Guard.NotZero(at));

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        Guard.NotNull(rig);
        Guard.NotEmpty(joint.Name);
        if (above == default)
            throw new ArgumentException("A control has to stand under another one.", nameof(above));

        var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private void Limb(RigDraft rig, Joint trunk, Control above, Control world, string name, Side side, Vector3 root, Vector3 upper, Vector3 lower)
    {
        Guard.NotNull(rig);
        Guard.NotEmpty(name);
        Guard.NotNull(side);
        if (name is not ("fore" or "hind"))
            throw new ArgumentOutOfRangeException(nameof(name), name, "A cat has fore legs and hind legs.");

        var first = Bone(trunk, $"{name}_root_{side}", root);
        var second = Bone(first, $"{name}_middle_{side}", upper);
        var third = Bone(second, $"{name}_paw_{side}", lower);

        var leg = rig.Chain(first, third);
        Guard.That(leg.Count == 3, "Two bones need three joints.");

        var holder = rig.Group($"{name}_{side}_group").Under(above);
        var ik = leg.Copy("ik").Under(holder);
        var fk = leg.Copy("fk").Under(holder);
        var paw = rig.Control($"{name}_paw_control_{side}").Under(world).PlacedAt(leg.Tip);
        var pole = rig.Control($"{name}_pole_{side}").Under(world).PlacedAt(ik.PolePoint(Guard.Positive(0.15f * scale)));
        rig.TwoBone(ik).Reach(paw).Face(pole);

        var parent = above;
        foreach (var joint in leg)
        {
            parent = rig.Control($"fk_turn_{joint.Name}").Under(parent).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(parent);
        }

        var amount = paw.Switch("fk");
        rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
    }

    private List<Joint> Tail(RigDraft rig, Joint pelvis, Control hips)
    {
        Guard.NotNull(rig);
        var joints = new List<Joint>(TailJoints);
        var (above, control) = (pelvis, hips);
        try
        {
            for (var i = 0; i < TailJoints; i++)
            {
                above = Bone(above, $"tail_{i}", Scaled(0f, 0.005f * i, -0.035f));
                control = Turn(rig, above, control);
                joints.Add(above);
            }
        }
        catch (ArgumentException exception)
        {
            throw new InvalidOperationException($"The tail stops after {joints.Count} joints.", exception);
        }

        return joints;
    }

    private Vector3 Scaled(float x, float y, float z)
    {
        Guard.That(scale > 0f, "The cat has no size.");
        return new Vector3(x, y, z) * scale;
    }
}
