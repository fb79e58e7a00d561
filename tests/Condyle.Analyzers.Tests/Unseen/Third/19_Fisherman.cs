using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Threading;
using System.Threading.Tasks;
using Condyle;

namespace Unseen.Third.R19;

public interface IMeasurementSource
{
    ValueTask<Vector3> GetOffsetAsync(string joint, CancellationToken cancellationToken = default);
}

public sealed class FisherMeasurements : IMeasurementSource
{
    private static readonly Dictionary<string, Vector3> Offsets = new()
    {
        ["pelvis"] = new(0, 0.96f, 0),
        ["waist"] = new(0, 0.12f, 0),
        ["chest"] = new(0, 0.19f, 0),
        ["neck"] = new(0, 0.22f, 0),
        ["head"] = new(0, 0.09f, 0.01f),
        ["shoulder"] = new(0.18f, 0.16f, 0),
        ["elbow"] = new(0.28f, 0, -0.02f),
        ["wrist"] = new(0.25f, 0, 0.02f),
        ["hip"] = new(0.09f, -0.04f, 0),
        ["knee"] = new(0, -0.42f, 0.02f),
        ["ankle"] = new(0, -0.41f, -0.02f),
    };

    public ValueTask<Vector3> GetOffsetAsync(string joint, CancellationToken cancellationToken = default)
    {
        cancellationToken.ThrowIfCancellationRequested();
        return ValueTask.FromResult(Offsets.TryGetValue(joint, out var offset) ? offset : Vector3.Zero);
    }
}

/// <summary>A fisherman with a rod.</summary>
public sealed class Fisherman : IRigDefinition
{
    private readonly IMeasurementSource measurements = new FisherMeasurements();

    public void Define(RigDraft rig)
    {
        using var cancellation = new CancellationTokenSource();
        DefineAsync(rig, cancellation.Token).GetAwaiter().GetResult();
    }

    private async Task DefineAsync(RigDraft rig, CancellationToken cancellationToken)
    {
        var world = rig.Control("world");
        var torso = await CreateTorsoAsync(rig, cancellationToken).ConfigureAwait(false);
        var handles = new Dictionary<string, Control>();
        var above = world;
        foreach (var joint in torso)
        {
            above = await FollowAsync(rig, above, joint, cancellationToken).ConfigureAwait(false);
            handles[joint.Name] = above;
        }

        var limbs = await Task.WhenAll(Side.Both.SelectMany(side => new[]
        {
            CreateLimbAsync(rig, torso.Single(joint => joint.Name == "chest"), ["shoulder", "elbow", "wrist"], side, cancellationToken),
            CreateLimbAsync(rig, torso.Single(joint => joint.Name == "pelvis"), ["hip", "knee", "ankle"], side, cancellationToken),
        })).ConfigureAwait(false);

        var goals = new List<Control>();
        foreach (var limb in limbs)
        {
            var holder = limb.Count > 0 && limb.Root.Name.StartsWith("shoulder", StringComparison.Ordinal) ? handles["chest"] : handles["pelvis"];
            goals.Add(await SolveLimbAsync(rig, limb, holder, world, cancellationToken).ConfigureAwait(false));
        }

        var rod = await CreateRodAsync(rig, limbs.First(limb => limb.Tip.Name == "wrist_right").Tip, cancellationToken).ConfigureAwait(false);
        var grip = goals.First(goal => goal.Name.Contains("wrist_right"));
        await foreach (var control in BendRodAsync(rig, grip, rod, cancellationToken).ConfigureAwait(false))
        {
            control.Lock(Channels.Move | Channels.TurnY);
        }
    }

    private async Task<IReadOnlyList<Joint>> CreateTorsoAsync(RigDraft rig, CancellationToken cancellationToken)
    {
        var joints = new List<Joint>();
        foreach (var name in new[] { "pelvis", "waist", "chest", "neck", "head" })
        {
            var at = await measurements.GetOffsetAsync(name, cancellationToken).ConfigureAwait(false);
            joints.Add(joints.Count == 0 ? rig.Skeleton("fisherman").Root(name, at: at) : joints[^1].Child(name, at: at));
        }

        return joints;
    }

    private async Task<Chain> CreateLimbAsync(RigDraft rig, Joint parent, string[] names, Side side, CancellationToken cancellationToken)
    {
        var joints = new List<Joint>(names.Length);
        foreach (var name in names)
        {
            var at = await measurements.GetOffsetAsync(name, cancellationToken);
            at.X *= side.Sign;
            parent = parent.Child($"{name}_{side}", at: at);
            joints.Add(parent);
        }

        return rig.Chain(joints.First(), joints.Last());
    }

    private static Task<Control> FollowAsync(RigDraft rig, Control above, Joint joint, CancellationToken cancellationToken)
    {
        if (cancellationToken.IsCancellationRequested)
        {
            return Task.FromCanceled<Control>(cancellationToken);
        }

        var control = rig.Control($"{joint}_turn").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return Task.FromResult(control);
    }

    private static async Task<Control> SolveLimbAsync(RigDraft rig, Chain chain, Control above, Control world, CancellationToken cancellationToken)
    {
        var group = rig.Group($"{chain.Root}_limb_group").Under(above).PlacedAt(chain.Root);
        var ik = chain.Copy("ik").Under(group);
        var fk = chain.Copy("fk").Under(group);
        var goal = rig.Control($"{chain.Tip}_goal").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{chain[1]}_pole").Under(world).PlacedAt(ik.PolePoint(0.4f));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        Node over = above;
        foreach (var joint in chain)
        {
            over = await TurnAsync(joint, over).ConfigureAwait(false);
        }

        var amount = goal.Switch("ik", 1f);
        rig.Blend(chain).From(ik, amount).From(fk, amount.Inverse);
        cancellationToken.ThrowIfCancellationRequested();
        return goal;

        async ValueTask<Node> TurnAsync(Joint joint, Node parent)
        {
            await Task.CompletedTask;
            var control = rig.Control($"fk_{joint}").Under(parent).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            return control;
        }
    }

    private static Task<List<Joint>> CreateRodAsync(RigDraft rig, Joint hand, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var joints = new List<Joint>();
        for (var i = 0; i < 10; i++)
        {
            hand = hand.Child($"rod_{i}", JointRole.Helper, new Vector3(0, 0.05f, i == 0 ? 0.05f : 0.25f));
            joints.Add(hand);
        }

        rig.Label("rod_label", "ROD");
        return Task.FromResult(joints);
    }

    private static async IAsyncEnumerable<Control> BendRodAsync(
        RigDraft rig, Control grip, IReadOnlyList<Joint> rod, [EnumeratorCancellation] CancellationToken cancellationToken)
    {
        var above = grip;
        foreach (var joint in rod)
        {
            above = await FollowAsync(rig, above, joint, cancellationToken).ConfigureAwait(false);
            yield return above;
        }
    }
}
