using System;
using System.Numerics;
using Condyle;

namespace Unseen.First.R13;

/// <summary>The keeper of the light: what each joint gets is decided by matching on its name and on what was built before it.</summary>
public sealed class LighthouseKeeper : IRigDefinition
{
    private static readonly string[][] Strings =
    [
        ["pelvis", "waist", "chest", "neck", "head", "brow"],
        ["chest", "collar_left", "shoulder_left", "elbow_left", "wrist_left", "lantern"],
        ["chest", "collar_right", "shoulder_right", "elbow_right", "wrist_right"],
        ["pelvis", "hip_left", "knee_left", "ankle_left"],
        ["pelvis", "hip_right", "knee_right", "ankle_right"],
    ];

    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("keeper").Root("pelvis", at: new Vector3(0, 0.92f, 0));
        var keeper = rig.Control("keeper");
        var built = new Built(pelvis, Hang(rig, pelvis, keeper), null);
        foreach (var names in Strings)
            built = Walk(rig, built, names, keeper);
    }

    private sealed record Built(Joint Joint, Control? Handle, Built? Before)
    {
        public Built? Find(string name) => this switch
        {
            { Joint.Name: var mine } when mine == name => this,
            { Before: { } before } => before.Find(name),
            _ => null,
        };
    }

    private static Built Walk(RigDraft rig, Built built, ReadOnlySpan<string> names, Control keeper) => names switch
    {
        [] or [_] => built,
        [var above, ['h', 'i', 'p', ..] or ['s', 'h', 'o', 'u', 'l', 'd', 'e', 'r', ..], var middle, var tip, .. var rest] when built.Find(above) is { } root =>
            Walk(rig, Limb(rig, built, root, names[1], middle, tip, keeper), [tip, .. rest], keeper),
        [var above, var name, ..] when built.Find(above) is { Joint: var joint, Handle: { } handle } =>
            Walk(rig, One(rig, built, joint.Child(name, at: At(name)), handle), names[1..], keeper),
        [var above, ..] => throw new InvalidOperationException($"Nothing is built at '{above}', so nothing can hang there."),
    };

    private static Built One(RigDraft rig, Built built, Joint joint, Control above) => new(joint, Hang(rig, joint, above), built);

    private static Built Limb(RigDraft rig, Built built, Built root, string first, string middle, string tip, Control keeper)
    {
        var side = SideOf(first)!;
        var top = root.Joint.Child(first, at: At(first));
        var bend = top.Child(middle, at: At(middle));
        var end = bend.Child(tip, at: At(tip));
        var limb = rig.Chain(top, end);
        var (word, pole) = first switch
        {
            ['h', ..] => ("leg", 0.6f),
            ['s', ..] => ("arm", 0.4f),
            _ => throw new ArgumentException($"'{first}' begins no limb.", nameof(first)),
        };

        var holder = root.Handle ?? keeper;
        var parts = rig.Group($"{word}_{side}").Under(keeper).PlacedAt(holder);
        rig.Drive(parts).ByMatrix(holder);
        var ik = limb.Copy("ik").Under(parts);
        var fk = limb.Copy("fk").Under(parts);
        var goal = rig.Control($"{tip}_goal").Under(keeper).PlacedAt(end);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control($"{middle}_pole").Under(keeper).PlacedAt(ik.PolePoint(pole)).Lock(Channels.Turn));

        var last = holder;
        foreach (var joint in limb)
            rig.Drive(fk.Of(joint)).ByChannels(last = rig.Control($"turn_{joint}").Under(last).PlacedAt(joint).Lock(Channels.Move));
        var swing = goal.Switch("fk", atRest: word is "arm" ? 1f : 0f);
        rig.Blend(limb).From(fk, swing).From(ik, swing.Inverse);
        return new Built(end, goal, new Built(top, null, built));
    }

    private static Control Hang(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        control = joint.Name switch
        {
            "pelvis" => control,
            "lantern" => control.Unlock(Channels.Scale).LimitTurn(Axis.Z, -30, 30),
            "head" or "neck" => control.Lock(Channels.Move).LimitTurn(Axis.Y, -60, 60),
            { Length: > 6 } named when named.StartsWith("collar") => control.Lock(Channels.Move | Channels.TurnX).LimitTurn(Axis.Z, -15, 25),
            _ => control.Lock(Channels.Move),
        };
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static Side? SideOf(string name) => name.Split('_') switch
    {
        [_, "left"] => Side.Left,
        [_, "right"] => Side.Right,
        _ => null,
    };

    private static Vector3 At(string name) => (name.Split('_')[0], SideOf(name)?.Sign) switch
    {
        ("collar", float sign) => new Vector3(0.04f * sign, 0.2f, 0.02f),
        ("shoulder", float sign) => new Vector3(0.14f * sign, 0.01f, -0.02f),
        ("elbow", { } sign) => new Vector3(0.27f * sign, -0.02f, -0.03f),
        ("wrist", { } sign) => new Vector3(0.25f * sign, 0, 0.05f),
        ("hip", { } sign) => new Vector3(0.1f * sign, -0.05f, 0),
        (("knee" or "ankle") and var part, not null) => new Vector3(0, -0.42f, part == "knee" ? 0.03f : -0.05f),
        ("lantern", null) => new Vector3(0.03f, -0.25f, 0),
        ("brow", _) => new Vector3(0, 0.08f, 0.1f),
        (_, null) => new Vector3(0, 0.14f, 0.005f),
        var (unknown, sign) => throw new ArgumentException($"No place for '{unknown}' on {sign}.", nameof(name)),
    };
}
