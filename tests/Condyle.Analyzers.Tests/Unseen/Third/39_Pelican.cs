using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R39;

public interface ILimb
{
    string Title { get; }

    void Grow(Joint trunk);

    void Rig(in LimbContext context);
}

public readonly struct LimbContext(RigDraft draft, Control world, Control trunk, Group systems)
{
    public RigDraft Draft { get; } = draft;

    public Control World { get; } = world;

    public Control Trunk { get; } = trunk;

    public Group Systems { get; } = systems;
}

public abstract class LimbBase(string title) : ILimb
{
    protected readonly List<Joint> joints = [];

    public string Title { get; } = title;

    public abstract void Grow(Joint trunk);

    public abstract void Rig(in LimbContext context);

    protected void Add(Joint trunk, params IEnumerable<(string Name, Vector3 At)> parts)
    {
        foreach (var (name, at) in parts)
            joints.Add((joints.Count == 0 ? trunk : joints[^1]).Child(name, at: at));
    }

    protected Control Turns(in LimbContext context, Control above)
    {
        foreach (var joint in joints)
        {
            above = context.Draft.Control($"{Title}_{joint.Name}").Under(above).PlacedAt(joint);
            context.Draft.Drive(joint).ByChannels(above);
        }

        return above;
    }
}

public sealed class Wing(Side side) : LimbBase($"wing_{side}")
{
    private Joint alula;

    public override void Grow(Joint trunk)
    {
        var x = side.Sign;
        Add(
            trunk,
            ($"shoulder_{side}", new Vector3(0.12f * x, 0.08f, 0.05f)),
            ($"elbow_{side}", new Vector3(0.3f * x, 0.02f, -0.1f)),
            ($"wrist_{side}", new Vector3(0.38f * x, 0f, 0.1f)));
        alula = joints[^1].Child($"alula_{side}", at: new Vector3(0.05f * x, 0f, 0.05f));
        for (var i = 0; i < 5; i++)
            joints[^1].Child($"primary_{i}_{side}", at: new Vector3((0.1f + (0.04f * i)) * x, 0f, -0.05f * i));
    }

    public override void Rig(in LimbContext context)
    {
        var chain = context.Draft.Chain(joints[0], joints[2]);
        var holder = context.Draft.Group($"{Title}_group").Under(context.Trunk);
        var fold = chain.Copy("fold").Under(holder);
        var flap = chain.Copy("flap").Under(holder);

        var hand = context.Draft.Control($"{Title}_hand").Under(context.World).PlacedAt(chain.Tip);
        context.Draft.TwoBone(fold).Reach(hand).Face(
            context.Draft.Control($"{Title}_pole").Under(context.Trunk).PlacedAt(chain.PolePoint(0.5f)));

        var above = context.Trunk;
        foreach (var joint in chain)
        {
            above = context.Draft.Control($"flap_{joint.Name}").Under(above).PlacedAt(joint);
            context.Draft.Drive(flap.Of(joint)).ByChannels(above);
        }

        var amount = hand.Switch("flap", 1f).AlsoOn(context.Trunk);
        context.Draft.Blend(chain).From(fold, amount.Inverse).From(flap, amount);
        context.Draft.Label($"{Title}_flap_label", "FLAP").ShownBy(amount);

        var thumb = context.Draft.Control($"{Title}_alula").Under(joints[^1]).PlacedAt(alula);
        context.Draft.Drive(alula).ByChannels(thumb);
    }
}

public sealed class Leg(Side side) : LimbBase($"leg_{side}")
{
    public override void Grow(Joint trunk) => Add(
        trunk,
        ($"hip_{side}", new Vector3(0.07f * side.Sign, -0.12f, -0.05f)),
        ($"knee_{side}", new Vector3(0f, -0.12f, 0.05f)),
        ($"ankle_{side}", new Vector3(0f, -0.14f, -0.04f)),
        ($"web_{side}", new Vector3(0f, -0.02f, 0.08f)));

    public override void Rig(in LimbContext context)
    {
        var chain = context.Draft.Chain(joints[0], joints[2]);
        var ik = chain.Copy("ik").Under(context.Systems);
        var foot = context.Draft.Control($"{Title}_foot").Under(context.World).PlacedAt(chain.Tip);
        context.Draft.TwoBone(ik).Reach(foot);
        context.Draft.Blend(chain).From(ik, 1f);
        var web = context.Draft.Control($"{Title}_web").Under(foot).PlacedAt(joints[3]);
        context.Draft.Drive(joints[3]).ByChannels(web);
    }
}

public sealed class Neck : LimbBase
{
    private Joint jaw;
    private Joint pouch;

    public Neck()
        : base("neck")
    {
    }

    public override void Grow(Joint trunk)
    {
        Add(trunk, Enumerable.Range(1, 6).Select(n => ($"neck_{n}", new Vector3(0f, 0.08f, n < 4 ? 0.05f : -0.02f))));
        Add(trunk, ("head", new Vector3(0f, 0.05f, 0.04f)));
        jaw = joints[^1].Child("jaw", at: new Vector3(0f, -0.03f, 0.03f));
        pouch = jaw.Child("pouch", at: new Vector3(0f, -0.05f, 0.18f));
    }

    public override void Rig(in LimbContext context)
    {
        var head = Turns(context, context.Trunk);
        var bite = context.Draft.Control("bite").Under(head).PlacedAt(jaw).Lock(Channels.Move).LimitTurn(Axis.X, 0f, 45f);
        context.Draft.Drive(jaw).ByChannels(bite);
        var gulp = context.Draft.Control("gulp").Under(bite).PlacedAt(pouch).Unlock(Channels.Scale);
        context.Draft.Drive(pouch).ByChannels(gulp).WithScale();
    }
}

public sealed class Tail : LimbBase
{
    public Tail()
        : base("tail")
    {
    }

    public override void Grow(Joint trunk) => Add(trunk, ("rump", new Vector3(0f, 0f, -0.2f)), ("tail", new Vector3(0f, 0f, -0.1f)));

    public override void Rig(in LimbContext context) => Turns(context, context.Trunk);
}

public sealed class Pelican : IRigDefinition
{
    private readonly ILimb[] limbs = [new Neck(), new Wing(Side.Left), new Wing(Side.Right), new Leg(Side.Left), new Leg(Side.Right), new Tail()];

    public void Define(RigDraft rig)
    {
        var trunk = rig.Skeleton("pelican").Root("trunk", at: new Vector3(0f, 0.55f, 0f));
        foreach (var limb in limbs)
            limb.Grow(trunk);

        var world = rig.Control("world");
        var body = rig.Control("body").Under(world).PlacedAt(trunk);
        rig.Drive(trunk).ByChannels(body);
        var context = new LimbContext(rig, world, body, rig.Group("systems").Under(body));
        foreach (var limb in limbs)
            limb.Rig(context);
    }
}
