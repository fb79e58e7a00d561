using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R17;

/// <summary>What a species says about its birds; the rest of the rig is the same for all of them.</summary>
public interface ISpecies
{
    static abstract string Word { get; }

    static abstract float Span { get; }

    static virtual int NeckJoints => 3;

    static virtual float WingShare(int bone) => bone switch { 0 => 0.3f, 1 => 0.4f, _ => 0.3f };
}

public readonly struct BrownPelican : ISpecies
{
    public static string Word => "brown_pelican";

    public static float Span => 2f;

    public static int NeckJoints => 5;
}

public interface ILimbPlan<TSelf>
    where TSelf : ILimbPlan<TSelf>
{
    static abstract TSelf For(Side side);

    static abstract string Prefix { get; }

    Vector3 this[int bone] { get; }

    Side Side { get; }

    float PoleDistance => 0.5f;
}

public readonly record struct WingPlan<TSpecies>(Side Side) : ILimbPlan<WingPlan<TSpecies>>
    where TSpecies : ISpecies
{
    public static WingPlan<TSpecies> For(Side side) => new(side);

    public static string Prefix => "wing";

    public Vector3 this[int bone] => new(Side.Sign * TSpecies.Span / 2 * TSpecies.WingShare(bone), bone == 0 ? 0.1f : 0, bone == 1 ? -0.1f : 0.05f);
}

public sealed record LegPlan(Side Side) : ILimbPlan<LegPlan>
{
    public static LegPlan For(Side side) => new(side);

    public static string Prefix => "leg";

    public Vector3 this[int bone] => bone == 0 ? new(Side.Sign * 0.07f, -0.1f, 0) : new(0, -0.12f, bone == 1 ? 0.05f : -0.03f);

    float ILimbPlan<LegPlan>.PoleDistance => 0.25f;
}

/// <summary>A pelican of the fish dock.</summary>
public sealed class Pelican : IRigDefinition
{
    public void Define(RigDraft rig) => new Bird<BrownPelican>(rig).Build();
}

internal sealed class Bird<TSpecies>(RigDraft rig)
    where TSpecies : struct, ISpecies
{
    private readonly Joint body = rig.Skeleton(TSpecies.Word).Root("body", at: new Vector3(0, 0.5f, 0));
    private readonly Registry<string, Control> handles = new(StringComparer.Ordinal);

    public void Build()
    {
        var centre = handles.Keep("body", Posed(body, rig.Control(TSpecies.Word)));
        var (neck, above) = (body, centre);
        for (var i = 0; i < TSpecies.NeckJoints; i++)
        {
            neck = neck.Child($"neck_{i}", at: new Vector3(0, 0.09f, i % 2 == 0 ? 0.05f : -0.02f));
            above = handles.Keep(neck.Name, Posed(neck, above));
        }

        var pouch = Posed(neck.Child("pouch", at: new Vector3(0, -0.04f, 0.12f)), above).Unlock(Channels.Scale);
        handles.Keep(Largest("pouch", "bill"), pouch);

        Limbs<WingPlan<TSpecies>>(centre);
        Limbs<LegPlan>(centre);
        rig.Label($"{TSpecies.Word}_label", $"{typeof(TSpecies).Name}: {handles.Count} handles").Under(centre);
    }

    private void Limbs<TPlan>(Control above)
        where TPlan : ILimbPlan<TPlan>
    {
        foreach (var side in Side.Both)
            handles.Keep($"{TPlan.Prefix}_{side}", Limb(TPlan.For(side), above));
    }

    private Control Limb<TPlan>(TPlan plan, Control above)
        where TPlan : ILimbPlan<TPlan>
    {
        var joints = new List<Joint>(3);
        for (var bone = 0; bone < 3; bone++)
            joints.Add((bone == 0 ? body : joints[bone - 1]).Child($"{TPlan.Prefix}_{bone}_{plan.Side}", at: plan[bone]));
        var chain = rig.Chain(joints[0], joints[2]);

        var parts = rig.Group($"{TPlan.Prefix}_{plan.Side}_group").PlacedAt(above);
        rig.Drive(parts).ByMatrix(above);
        var ik = chain.Copy("ik").Under(parts);
        var fk = chain.Copy("fk").Under(parts);
        var goal = rig.Control($"{TPlan.Prefix}_goal_{plan.Side}").Under(above).PlacedAt(chain.Tip);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"{TPlan.Prefix}_pole_{plan.Side}").Under(above).PlacedAt(ik.PolePoint(plan.PoleDistance)));

        var last = above;
        foreach (var joint in chain)
            last = Posed(fk.Of(joint), last, joint, "fk_");
        var amount = goal.Switch("fk", atRest: TPlan.Prefix == "wing" ? 1 : 0);
        rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
        return goal;
    }

    private Control Posed(Joint joint, Control above) => Posed(joint, above, joint, "");

    private Control Posed<TTag>(Node target, Control above, Joint at, TTag tag)
    {
        var control = rig.Control($"{tag}turn_{at.Name}").Under(above).PlacedAt(at);
        rig.Drive(target).ByChannels(control);
        return control;
    }

    private static T Largest<T>(T one, T other)
        where T : IComparable<T> => one.CompareTo(other) >= 0 ? one : other;
}

internal sealed class Registry<TKey, TValue>(IEqualityComparer<TKey> comparer)
    where TKey : notnull
    where TValue : struct, IEquatable<TValue>
{
    private readonly Dictionary<TKey, TValue> kept = new(comparer);

    public int Count => kept.Count;

    public TValue Keep(TKey key, TValue value) => kept.TryAdd(key, value) ? value : throw new ArgumentException($"'{key}' is kept already.", nameof(key));
}
