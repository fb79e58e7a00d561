using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R08;

public interface ILink<TSelf>
    where TSelf : struct, ILink<TSelf>
{
    static abstract string Stem { get; }

    static abstract JointRole Role { get; }

    Vector3 Step { get; }

    static abstract TSelf At(int index, int count);
}

public readonly struct HempLink(Vector3 step) : ILink<HempLink>
{
    public static string Stem => "hemp";

    public static JointRole Role => JointRole.Deform;

    public Vector3 Step => step;

    public static HempLink At(int index, int count)
    {
        var sag = MathF.Cos(MathF.PI * index / count) * 0.08f;
        return new HempLink(new Vector3(0, -sag, 0.25f));
    }
}

public readonly struct IronLink(Vector3 step) : ILink<IronLink>
{
    public static string Stem => "iron";

    public static JointRole Role => JointRole.Helper;

    public Vector3 Step => step;

    public static IronLink At(int index, int count) => new(new Vector3(index % 2 == 0 ? 0.02f : -0.02f, -0.12f, 0));
}

public sealed class Strand<TLink>
    where TLink : struct, ILink<TLink>
{
    private readonly List<Joint> joints = [];

    private Strand(string owner) => Owner = owner;

    public string Owner { get; }

    public IReadOnlyList<Joint> Joints => joints;

    public static Strand<TLink> Spin(string owner, Joint from, int count)
    {
        var strand = new Strand<TLink>(owner);
        for (var i = 0; i < count; i++)
        {
            from = from.Child($"{owner}_{TLink.Stem}_{i:00}", TLink.Role, TLink.At(i, count).Step);
            strand.joints.Add(from);
        }

        return strand;
    }
}

public interface IHandling<TLink, TResult>
    where TLink : struct, ILink<TLink>
{
    TResult Apply(RigDraft rig, Strand<TLink> strand, Control above);
}

public sealed class HandEach<TLink> : IHandling<TLink, IReadOnlyList<Control>>
    where TLink : struct, ILink<TLink>
{
    public IReadOnlyList<Control> Apply(RigDraft rig, Strand<TLink> strand, Control above)
    {
        var made = new List<Control>();
        foreach (var joint in strand.Joints)
        {
            above = rig.Control($"{joint.Name}_turn").Under(above).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(joint).ByChannels(above);
            made.Add(above);
        }

        return made;
    }
}

public sealed class SlackOrTaut<TLink>(Control end) : IHandling<TLink, Switch>
    where TLink : struct, ILink<TLink>
{
    public Switch Apply(RigDraft rig, Strand<TLink> strand, Control above)
    {
        var chain = rig.Chain(strand.Joints[0], strand.Joints[^1]);
        var holder = rig.Group($"{strand.Owner}_group").Under(above).PlacedAt(chain.Root);
        var (slack, taut) = Twice(tag => chain.Copy(tag).Under(holder), "slack", "taut");

        Node up = above;
        for (var i = 0; i < chain.Count; i++)
        {
            var joint = chain[i];
            Control bend = rig.Control($"slack_{joint}").Under(up).PlacedAt(joint);
            rig.Drive(slack.Of(joint)).ByChannels(bend);
            var pull = rig.Group($"pull_{joint}_group").Under(holder).PlacedAt(joint);
            var far = (float)i / (chain.Count - 1);
            rig.Blend(pull).From(above, 1f - far).From(end, far);
            rig.Drive(taut.Of(joint)).ByChannels(pull);
            up = bend;
        }

        var amount = end.Switch("taut").AlsoOn(above);
        rig.Blend(chain).From(slack, amount.Inverse).From(taut, amount);
        return amount;
    }

    private static (T First, T Second) Twice<TIn, T>(Func<TIn, T> make, TIn first, TIn second) => (make(first), make(second));
}

/// <summary>A bollard, its mooring line of hemp, and the iron chain that hangs from the quay beside it.</summary>
public sealed class MooringLine : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var bollard = rig.Skeleton("mooring_line").Root("bollard", JointRole.Helper);
        var cleat = bollard.Child("cleat", at: new Vector3(0, 0.6f, 0));

        var line = Strand<HempLink>.Spin("bow", cleat, 24);
        var spring = Strand<HempLink>.Spin("spring", cleat, 16);
        var chain = Strand<IronLink>.Spin("quay", bollard, 12);

        var world = rig.Control("world");
        var root = Handle(rig, "bollard_turn", world, bollard);
        var hitch = Handle(rig, "hitch", root, cleat);
        var ship = rig.Control("ship").Under(world).PlacedAt(line.Joints[^1]);

        var amounts = Use<HempLink, Switch>(rig, hitch, new SlackOrTaut<HempLink>(ship), line, spring).ToList();
        Use<IronLink, IReadOnlyList<Control>>(rig, root, new HandEach<IronLink>(), chain).ToList()[0][0].Unlock(Channels.Scale);

        rig.Label("taut_label", "TAUT").Under(ship).ShownBy(amounts[0]);
        rig.Label("slack_label", "SLACK").Under(ship).ShownBy(amounts[0].Inverse);
    }

    private static IEnumerable<TResult> Use<TLink, TResult>(RigDraft rig, Control above, IHandling<TLink, TResult> way, params Strand<TLink>[] strands)
        where TLink : struct, ILink<TLink> =>
        strands.Select(strand => way.Apply(rig, strand, above));

    private static Control Handle(RigDraft rig, string name, Control above, Joint joint)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
