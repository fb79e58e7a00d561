using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R21;

// ---- the parts of a market stall, and what is done with them ----

interface IPart
{
    void Accept(IPartVisitor visitor);
}

interface IPartVisitor
{
    void Visit(Awning part);

    void Visit(Scale part);

    void Visit(FishTail part);
}

sealed record Awning(string Name, float Width) : IPart
{
    public void Accept(IPartVisitor visitor) => visitor.Visit(this);
}

sealed record Scale(string Name, Vector3 At) : IPart
{
    public void Accept(IPartVisitor visitor) => visitor.Visit(this);
}

sealed record FishTail(string Name, int Fish, Vector3 At) : IPart
{
    public void Accept(IPartVisitor visitor) => visitor.Visit(this);
}

interface ILiveliness
{
    void Bring(RigDraft rig, Joint joint, Control still, Control alive);
}

sealed class Limp : ILiveliness
{
    public void Bring(RigDraft rig, Joint joint, Control still, Control alive) => rig.Drive(joint).ByChannels(still);
}

sealed class Flapping : ILiveliness
{
    readonly float atRest;

    public Flapping(float atRest) => this.atRest = atRest;

    public void Bring(RigDraft rig, Joint joint, Control still, Control alive)
    {
        var flap = still.Switch("flap", atRest);
        rig.Blend(joint).From(still, flap.Inverse).From(alive, flap);
        rig.Label($"flap_{joint.Name}_label", "FLAP").ShownBy(flap).Under(still);
    }
}

sealed class JointVisitor : IPartVisitor
{
    readonly Joint stall;

    public JointVisitor(Joint stall) => this.stall = stall;

    public Dictionary<string, Joint> Made { get; } = new();

    public void Visit(Awning part)
    {
        foreach (var side in Side.Both)
            Add($"{part.Name}_{side}", new Vector3(part.Width / 2 * side.Sign, 2.1f, 0));
    }

    public void Visit(Scale part)
    {
        Add(part.Name, part.At);
        Made[part.Name + "_pan"] = Made[part.Name].Child(part.Name + "_pan", at: new Vector3(0, -0.3f, 0));
    }

    public void Visit(FishTail part) => Add(part.Name + part.Fish, part.At);

    void Add(string name, Vector3 at) => Made.Add(name, stall.Child(name, at: at));
}

sealed class ControlVisitor : IPartVisitor
{
    readonly RigDraft rig;
    readonly Control main;
    readonly IReadOnlyDictionary<string, Joint> joints;
    readonly Func<FishTail, ILiveliness> liveliness;

    public ControlVisitor(RigDraft rig, Control main, IReadOnlyDictionary<string, Joint> joints, Func<FishTail, ILiveliness> liveliness)
    {
        this.rig = rig;
        this.main = main;
        this.joints = joints;
        this.liveliness = liveliness;
    }

    public void Visit(Awning part)
    {
        foreach (var side in Side.Both)
            rig.Drive(joints[$"{part.Name}_{side}"]).ByChannels(Hung($"{part.Name}_{side}", "main"));
    }

    public void Visit(Scale part)
    {
        var beam = Hung(part.Name, "turn").Lock(Channels.Move).LimitTurn(Axis.Z, -25, 25);
        rig.Drive(joints[part.Name]).ByChannels(beam);
        rig.Drive(joints[part.Name + "_pan"]).ByChannels(Hung(part.Name + "_pan", "turn").Under(beam));
    }

    public void Visit(FishTail part)
    {
        var name = part.Name + part.Fish;
        liveliness(part).Bring(rig, joints[name], Hung(name, "still"), Hung(name, "alive"));
    }

    Control Hung(string joint, string tag) => rig.Control($"{tag}_{joint}").Under(main).PlacedAt(joints[joint]);
}

public sealed class FishMarket : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        IPart[] parts =
        {
            new Awning("awning", 2.4f),
            new Scale("scale", new Vector3(0.6f, 1.5f, 0.2f)),
            new FishTail("cod", 1, new Vector3(-0.5f, 1, 0.3f)),
            new FishTail("cod", 2, new Vector3(-0.3f, 1, 0.3f)),
            new FishTail("eel", 3, new Vector3(0, 1, 0.3f)),
        };
        var stall = rig.Skeleton("fish_market").Root("stall", JointRole.Helper);
        var main = rig.Control("main").PlacedAt(stall);
        rig.Drive(stall).ByChannels(main);
        var first = new JointVisitor(stall);
        foreach (var part in parts)
            part.Accept(first);
        var second = new ControlVisitor(rig, main, first.Made, fish => fish.Name == "eel" ? new Flapping(0.5f) : new Limp());
        foreach (var part in parts)
            part.Accept(second);
    }
}
