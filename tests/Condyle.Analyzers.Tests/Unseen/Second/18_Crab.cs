using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R18;

/// <summary>The crab from the fish crate: eight legs that step by IK, two claws by FK, eyes on stalks.</summary>
public sealed class Crab : IRigDefinition
{
    private const int LegsPerSide = 4;

    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("crab").Root("shell", at: new Vector3(0, 0.06f, 0));
        var body = rig.Control("body").PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);

        var feet = new Dictionary<Gait, List<Control>>();
        foreach (var leg in AllLegs())
        {
            var foot = BuildLeg(rig, shell, body, leg);
            if (!feet.TryGetValue(leg.Gait, out var inStep))
                feet[leg.Gait] = inStep = [];
            inStep.Add(foot);
        }

        // Two sets of feet that step in turn. The set's control carries its feet.
        foreach (var (gait, controls) in feet)
        {
            var step = rig.Control($"step_{gait.ToString().ToLowerInvariant()}").PlacedAt(shell).Lock(Channels.Turn);
            foreach (var control in controls)
                control.Under(step);
        }

        foreach (var side in Side.Both)
        {
            BuildClaw(rig, shell, body, side);
            BuildEye(rig, shell, body, side);
        }
    }

    private static IEnumerable<Leg> AllLegs()
    {
        for (var i = 0; i < LegsPerSide; i++)
        {
            foreach (var side in Side.Both)
            {
                // Neighbours and opposite legs never step together.
                var odd = (i + (side == Side.Left ? 0 : 1)) % 2 != 0;
                yield return new Leg(side, i + 1, 55f - 35f * i, odd ? Gait.Odd : Gait.Even);
            }
        }
    }

    private static Control BuildLeg(RigDraft rig, Joint shell, Control body, Leg leg)
    {
        var outwards = leg.Outwards;
        var coxa = shell.Child($"coxa_{leg}", at: outwards * 0.08f);
        var knee = coxa.Child($"knee_{leg}", at: outwards * 0.09f + new Vector3(0, 0.05f, 0));
        var foot = knee.Child($"foot_{leg}", at: outwards * 0.07f + new Vector3(0, -0.11f, 0));

        var chain = rig.Chain(coxa, foot).Bending(Vector3.UnitY);
        var copy = chain.Copy("ik").Under(body);
        var goal = rig.Control($"place_{foot}").PlacedAt(foot);
        var pole = rig.Control($"pole_{leg}").Under(body).PlacedAt(copy.PolePoint(0.2f)).Lock(Channels.Turn);
        rig.TwoBone(copy).Reach(goal).Face(pole);
        rig.Blend(chain).From(copy, 1);
        return goal;
    }

    private static void BuildClaw(RigDraft rig, Joint shell, Control body, Side side)
    {
        (string Name, Vector3 At)[] segments =
        [
            ("arm", new(0.07f, 0.01f, 0.07f)),
            ("hand", new(0.05f, 0.01f, 0.06f)),
            ("finger", new(-0.02f, 0.02f, 0.05f)),
        ];

        var (joint, control) = (shell, body);
        foreach (var (name, at) in segments)
        {
            joint = joint.Child($"claw_{name}_{side}", at: at with { X = at.X * side.Sign });
            control = rig.Control($"turn_claw_{name}_{side}").Under(control).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(joint).ByChannels(control);
        }

        control.Lock(Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, side == Side.Left ? -40 : 0, side == Side.Left ? 0 : 40);
    }

    private static void BuildEye(RigDraft rig, Joint shell, Control body, Side side)
    {
        var eye = shell.Child($"eye_{side}", at: new Vector3(0.025f * side.Sign, 0.03f, 0.08f));
        var look = rig.Control($"look_{side}").Under(body).PlacedAt(eye).Lock(Channels.Move);
        rig.Drive(eye).ByChannels(look);
    }

    private enum Gait
    {
        Even,
        Odd,
    }

    private sealed record Leg(Side Side, int Number, float DegreesForward, Gait Gait)
    {
        public Vector3 Outwards
        {
            get
            {
                var angle = DegreesForward * MathF.PI / 180f;
                return new Vector3(Side.Sign * MathF.Cos(angle), 0, MathF.Sin(angle));
            }
        }

        public override string ToString() => $"{Number}_{Side}";
    }
}
