using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R02;

/// <summary>Entry point of the stevedore character. Composes the modules that the module factory provides.</summary>
public sealed class StevedoreRigDefinition : IRigDefinition
{
    private readonly IRigModuleFactory _moduleFactory;
    private readonly ISkeletonProvider _skeletonProvider;

    public StevedoreRigDefinition()
        : this(new DefaultRigModuleFactory(StevedoreOptions.Default), new StevedoreSkeletonProvider())
    {
    }

    internal StevedoreRigDefinition(IRigModuleFactory moduleFactory, ISkeletonProvider skeletonProvider)
    {
        _moduleFactory = moduleFactory ?? throw new ArgumentNullException(nameof(moduleFactory));
        _skeletonProvider = skeletonProvider ?? throw new ArgumentNullException(nameof(skeletonProvider));
    }

    public void Define(RigDraft rig)
    {
        ArgumentNullException.ThrowIfNull(rig);

        var registry = _skeletonProvider.Provide(rig);
        var context = new RigContext(rig, registry);
        foreach (var module in _moduleFactory.CreateModules().OrderBy(static module => module.Order))
        {
            module.Build(context);
        }
    }
}

internal interface IRigModule
{
    int Order { get; }

    void Build(RigContext context);
}

internal interface IRigModuleFactory
{
    IReadOnlyCollection<IRigModule> CreateModules();
}

internal interface ISkeletonProvider
{
    IJointRegistry Provide(RigDraft rig);
}

internal interface IJointRegistry
{
    Joint Resolve(string name);
}

internal sealed record LimbOptions(string Name, string Root, string Middle, string Tip, string Anchor)
{
    public float PoleDistance { get; init; } = 0.45f;

    public float IkAtRest { get; init; } = 1f;

    public bool HasLabels { get; init; } = true;
}

internal sealed record StevedoreOptions
{
    public static StevedoreOptions Default { get; } = new();

    public IReadOnlyList<string> Torso { get; init; } = ["pelvis", "waist", "chest", "neck", "head"];

    public IReadOnlyList<LimbOptions> Limbs { get; init; } =
    [
        new LimbOptions("arm", "shoulder", "elbow", "wrist", "chest") { IkAtRest = 0f },
        new LimbOptions("leg", "hip", "knee", "ankle", "pelvis") { PoleDistance = 0.6f },
    ];
}

internal sealed class RigContext(RigDraft rig, IJointRegistry joints)
{
    private readonly Dictionary<string, Control> _controls = new(StringComparer.Ordinal);

    public RigDraft Rig { get; } = rig;

    public IJointRegistry Joints { get; } = joints;

    public Group Systems { get; } = rig.Group("systems_group");

    public Control Publish(string key, Control control)
    {
        _controls[key] = control;
        return control;
    }

    public Control Require(string key) =>
        _controls.TryGetValue(key, out var control) ? control : throw new InvalidOperationException($"No module published '{key}'.");
}

internal sealed class DictionaryJointRegistry : IJointRegistry
{
    private readonly Dictionary<string, Joint> _joints = new(StringComparer.Ordinal);

    public Joint Register(Joint joint)
    {
        _joints.Add(joint.Name, joint);
        return joint;
    }

    public Joint Resolve(string name) => _joints[name];
}

internal sealed class StevedoreSkeletonProvider : ISkeletonProvider
{
    public IJointRegistry Provide(RigDraft rig)
    {
        var registry = new DictionaryJointRegistry();
        var pelvis = registry.Register(rig.Skeleton("stevedore").Root("pelvis", at: new Vector3(0f, 0.98f, 0f)));
        var waist = registry.Register(pelvis.Child("waist", at: new Vector3(0f, 0.12f, 0f)));
        var chest = registry.Register(waist.Child("chest", at: new Vector3(0f, 0.2f, 0f)));
        var neck = registry.Register(chest.Child("neck", at: new Vector3(0f, 0.24f, -0.01f)));
        registry.Register(neck.Child("head", at: new Vector3(0f, 0.1f, 0.02f)));

        foreach (var side in Side.Both)
        {
            var shoulder = registry.Register(chest.Child($"shoulder_{side}", at: new Vector3(0.19f * side.Sign, 0.17f, 0f)));
            var elbow = registry.Register(shoulder.Child($"elbow_{side}", at: new Vector3(0.29f * side.Sign, 0f, -0.02f)));
            var wrist = registry.Register(elbow.Child($"wrist_{side}", at: new Vector3(0.27f * side.Sign, 0f, 0.02f)));
            registry.Register(wrist.Child($"hook_{side}", JointRole.Helper, new Vector3(0.08f * side.Sign, -0.02f, 0.02f)));
            var hip = registry.Register(pelvis.Child($"hip_{side}", at: new Vector3(0.1f * side.Sign, -0.04f, 0f)));
            var knee = registry.Register(hip.Child($"knee_{side}", at: new Vector3(0f, -0.43f, 0.02f)));
            var ankle = registry.Register(knee.Child($"ankle_{side}", at: new Vector3(0f, -0.42f, -0.02f)));
            registry.Register(ankle.Child($"toes_{side}", at: new Vector3(0f, -0.07f, 0.13f)));
        }

        return registry;
    }
}

internal sealed class DefaultRigModuleFactory(StevedoreOptions options) : IRigModuleFactory
{
    public IReadOnlyCollection<IRigModule> CreateModules()
    {
        var modules = new List<IRigModule> { new WorldModule(), new TorsoModule(options.Torso) };
        modules.AddRange(
            from limb in options.Limbs
            from side in Side.Both
            select new LimbModule(limb, side));
        return modules;
    }
}

internal sealed class WorldModule : IRigModule
{
    public int Order => 0;

    public void Build(RigContext context) => context.Publish("world", context.Rig.Control("world"));
}

internal sealed class TorsoModule(IReadOnlyList<string> joints) : IRigModule
{
    public int Order => 10;

    public void Build(RigContext context)
    {
        var parent = context.Require("world");
        foreach (var name in joints)
        {
            var joint = context.Joints.Resolve(name);
            parent = context.Publish(name, context.Rig.Control($"{name}_turn").Under(parent).PlacedAt(joint));
            context.Rig.Drive(joint).ByChannels(parent);
        }
    }
}

internal sealed class LimbModule(LimbOptions options, Side side) : IRigModule
{
    public int Order => 20;

    public void Build(RigContext context)
    {
        var rig = context.Rig;
        var chain = rig.Chain(context.Joints.Resolve($"{options.Root}_{side}"), context.Joints.Resolve($"{options.Tip}_{side}"));
        var anchor = context.Require(options.Anchor);
        var holder = rig.Group($"{options.Name}_{side}_group").Under(context.Systems).PlacedAt(chain.Root);
        rig.Drive(holder).ByMatrix(anchor).KeepingOffset();

        var ik = chain.Copy("ik").Under(holder);
        var goal = rig.Control($"{options.Name}_goal_{side}").Under(context.Require("world")).PlacedAt(chain.Tip);
        var pole = rig.Control($"{options.Middle}_pole_{side}").Under(goal).PlacedAt(ik.PolePoint(options.PoleDistance)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var fk = chain.Copy("fk").Under(holder);
        var above = anchor;
        foreach (var joint in chain)
        {
            above = rig.Control($"fk_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        var ikAmount = goal.Switch("ik", options.IkAtRest).AlsoOn(above);
        rig.Blend(chain).From(ik, ikAmount).From(fk, ikAmount.Inverse);

        if (options.HasLabels)
        {
            rig.Label($"{options.Name}_ik_label_{side}", "IK").Under(goal).ShownBy(ikAmount);
            rig.Label($"{options.Name}_fk_label_{side}", "FK").Under(above).ShownBy(ikAmount.Inverse);
        }
    }
}
