using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R21;

/// <summary>The dock's sluice: two mitre gates with paddles, and a walkway that folds up when they open.</summary>
public sealed class SluiceGate : IRigDefinition
{
    private const float GateWidth = 5.5f;
    private const float SillDepth = 6f;

    public void Define(RigDraft rig)
    {
        var sill = rig.Skeleton("sluice_gate").Root("sill", JointRole.Helper, new Vector3(0, -SillDepth, 0));
        var sluice = rig.Handle("sluice", sill);

        foreach (var side in Side.Both)
        {
            var gate = sill.Child($"gate_{side}", at: new Vector3(GateWidth * side.Sign, 0, 0));
            var swing = rig.Handle($"swing_gate_{side}", gate, sluice).TurnsOnly(Axis.Y, side.Range(0, 75));

            rig.Paddles(gate, swing, side, count: 2);
            rig.Walkway(gate, swing, side);
        }

        var chamber = rig.Group("chamber_group").Under(sluice);
        foreach (var name in (string[])["water_level", "float_gauge"])
        {
            var level = sill.Child(name, at: new Vector3(0, SillDepth * 0.7f, 2));
            rig.Handle($"raise_{name}", level, chamber).MovesOnly(Axis.Y, (-3, 2));
        }
    }
}

internal static class SluiceSentences
{
    extension(RigDraft rig)
    {
        public Control Handle(string name, Joint joint, Node? parent = null)
        {
            var control = rig.Control(name).PlacedAt(joint);
            if (parent is { } above)
                control = control.Under(above);
            rig.Drive(joint).ByChannels(control);
            return control;
        }

        public void Paddles(Joint gate, Control swing, Side side, int count)
        {
            for (var number = 1; number <= count; number++)
            {
                var paddle = gate.Child($"paddle_{number}_{side}", at: new Vector3(-1.5f * number * side.Sign, 0.8f, 0.1f));
                rig.Handle($"lift_paddle_{number}_{side}", paddle, swing).MovesOnly(Axis.Y, (0, 1.2f));
            }
        }

        public void Walkway(Joint gate, Control swing, Side side)
        {
            List<Joint> planks = [gate.Child($"walkway_{side}", at: new Vector3(-0.3f * side.Sign, 6.6f, -0.2f))];
            while (planks.Count < 3)
                planks.Add(planks[^1].Child($"walkway_{side}_{planks.Count}", at: new Vector3(-1.7f * side.Sign, planks.Count == 1 ? 0.05f : -0.05f, 0)));

            var walkway = rig.Chain(planks[0], planks[^1]);
            var holder = rig.Group($"walkway_{side}_group").Under(swing).PlacedAt(walkway.Root);
            var copy = walkway.Copy("reach").Under(holder);
            var end = rig.Control($"walkway_end_{side}").Under(swing).PlacedAt(walkway.Tip);
            var pole = rig.Control($"walkway_pole_{side}").Under(swing).PlacedAt(copy.PolePoint(1f));
            rig.TwoBone(copy).Reach(end).Face(pole);
            rig.Blend(walkway).From(copy, 1);
        }
    }

    extension(Control control)
    {
        public Control TurnsOnly(Axis axis, (float From, float To) degrees) =>
            control.Lock(Channels.Move | Channels.Turn & ~axis.Turning).LimitTurn(axis, degrees.From, degrees.To);

        public Control MovesOnly(Axis axis, (float From, float To) metres) =>
            control.Lock(Channels.Turn | Channels.Move & ~axis.Moving).LimitMove(axis, metres.From, metres.To);
    }

    extension(Axis axis)
    {
        private Channels Moving => axis switch
        {
            Axis.X => Channels.MoveX,
            Axis.Y => Channels.MoveY,
            _ => Channels.MoveZ,
        };

        private Channels Turning => axis switch
        {
            Axis.X => Channels.TurnX,
            Axis.Y => Channels.TurnY,
            _ => Channels.TurnZ,
        };
    }

    extension(Side side)
    {
        /// <summary>A range in the left side's sense.</summary>
        public (float From, float To) Range(float from, float to) => side == Side.Left ? (from, to) : (-to, -from);
    }
}
