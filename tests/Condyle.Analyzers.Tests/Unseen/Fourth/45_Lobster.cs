using System;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R45;

public sealed class Lobster : IRigDefinition
{
    private const string Segments = "shell>abdomen_1>abdomen_2>abdomen_3>fan";

    public void Define(RigDraft rig)
    {
        ReadOnlySpan<char> rest = Segments;
        Span<float> lengths = stackalloc float[] { 0f, 0.12f, 0.08f, 0.07f, 0.06f };
        Span<Joint> body = new Joint[lengths.Length];
        var skeleton = rig.Skeleton("lobster");
        var count = 0;
        while (!rest.IsEmpty)
        {
            var cut = rest.IndexOf('>');
            var word = cut < 0 ? rest : rest[..cut];
            rest = cut < 0 ? default : rest[(cut + 1)..];
            var at = new Vector3(0, 0, -lengths[count]);
            body[count] = count == 0 ? skeleton.Root(word.ToString(), at: at) : body[count - 1].Child(word.ToString(), at: at);
            count++;
        }

        var world = rig.Control("world");
        var above = world;
        Span<Control> handles = new Control[count];
        for (var i = 0; i < count; i++)
        {
            above = handles[i] = rig.Control(string.Concat("bend_", body[i].Name)).Under(above).PlacedAt(body[i]);
            if (i > 0)
                above.LimitTurn(Axis.X, -5f, 15f * i).Lock(Channels.Move);
            rig.Drive(body[i]).ByChannels(above);
        }

        ref readonly var shell = ref body[0];
        foreach (var side in Side.Both)
            Claw(rig, shell, handles[0], world, side);

        Legs(rig, shell, handles[..1], stackalloc float[] { 0.03f, 0f, -0.03f });
    }

    private static void Claw(RigDraft rig, in Joint shell, Control body, Control world, Side side)
    {
        Span<char> buffer = stackalloc char[32];
        "claw_".CopyTo(buffer);
        side.ToString().CopyTo(buffer[5..]);
        var name = new string(buffer[..(5 + side.ToString().Length)]);

        var shoulder = shell.Child(name + "_root", at: new Vector3(0.05f * side.Sign, 0, 0.06f));
        var elbow = shoulder.Child(name + "_bend", at: new Vector3(0.06f * side.Sign, 0.01f, 0.03f));
        var wrist = elbow.Child(name, at: new Vector3(-0.02f * side.Sign, 0, 0.08f));
        var chain = rig.Chain(shoulder, wrist);
        var ik = chain.Copy("ik").Under(body);
        var fk = chain.Copy("fk").Under(body);
        var grip = rig.Control("grip_" + name).Under(world).PlacedAt(wrist);
        rig.TwoBone(ik).Reach(grip).Face(rig.Control("pole_" + name).Under(body).PlacedAt(ik.PolePoint(0.1f)));
        var parent = body;
        for (var i = 0; i < chain.Count; i++)
        {
            parent = rig.Control("turn_" + chain[i].Name).Under(parent).PlacedAt(chain[i]);
            rig.Drive(fk.Of(chain[i])).ByChannels(parent);
        }

        var fkAmount = grip.Switch("fk");
        // the heavy claw stays mostly where its joints put it
        var heavy = side == Side.Left ? 0.9f : 1f;
        rig.Blend(chain).From(ik, fkAmount.Inverse).From(fk, heavy * fkAmount);
    }

    private static void Legs(RigDraft rig, Joint shell, ReadOnlySpan<Control> body, ReadOnlySpan<float> places)
    {
        for (var i = 0; i < places.Length * 2; i++)
        {
            var (index, which) = Math.DivRem(i, 2);
            var side = Side.Both[which];
            var leg = shell.Child($"leg_{index}_{side}", at: new Vector3(0.04f * side.Sign, -0.02f, places[index]));
            rig.Drive(leg).ByChannels(rig.Control($"step_{index}_{side}").Under(body[0]).PlacedAt(leg));
        }
    }
}
