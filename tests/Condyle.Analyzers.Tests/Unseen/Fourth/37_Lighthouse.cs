using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R37;

public sealed class Lighthouse : IRigDefinition
{
    public void Define(RigDraft rig) =>
        Tower.In(rig, "lighthouse")
            .Storey("foot", 0)
            .Storey("gallery", 14, sway: 1.5f)
            .Storey("lantern", 3, sway: 0.5f)
            .Then(tower => tower.Lamp("beam").Spinning())
            .Then(tower => tower.Lamp("mirror").Spinning().Trailing("beam"))
            .Shutters(6)
            .Door("door", hinge: new Vector3(0.6f, 0.1f, 2.5f), opensTo: 110)
            .Up();

    private sealed class Tower
    {
        private readonly RigDraft rig;
        private readonly Skeleton skeleton;
        private readonly Control world;
        private readonly List<(Joint Joint, Control Control)> storeys = [];
        private readonly Dictionary<string, Control> lamps = [];

        private Tower(RigDraft rig, string name)
        {
            this.rig = rig;
            skeleton = rig.Skeleton(name);
            world = rig.Control("world");
        }

        public (Joint Joint, Control Control) Top => storeys[^1];

        public static Tower In(RigDraft rig, string name) => new(rig, name);

        public Tower Storey(string name, float up, float? sway = null)
        {
            var at = new Vector3(0, up, 0);
            var joint = storeys.Count > 0 ? Top.Joint.Child(name, at: at) : skeleton.Root(name, at: at);
            var control = rig.Control($"sway_{name}").Under(storeys.Count > 0 ? Top.Control : world).PlacedAt(joint);
            control.Lock(Channels.Move);
            if (sway is { } degrees)
                control.LimitTurn(Axis.X, -degrees, degrees).LimitTurn(Axis.Z, -degrees, degrees);
            rig.Drive(joint).ByChannels(control);
            storeys.Add((joint, control));
            return this;
        }

        public LampBuilder Lamp(string name)
        {
            var joint = Top.Joint.Child(name, at: new Vector3(0, 1.2f, 0));
            var control = lamps[name] = rig.Control($"spin_{name}").Under(Top.Control).PlacedAt(joint);
            return new LampBuilder(this, joint, control);
        }

        public Tower Then(Func<Tower, LampBuilder> step) => step(this).Done();

        public Tower Shutters(int count)
        {
            for (var i = 0; i < count; i++)
            {
                var angle = MathF.Tau * i / count;
                var shutter = Top.Joint.Child($"shutter_{i}", at: new Vector3(MathF.Sin(angle), 1, MathF.Cos(angle)), turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, angle));
                rig.Drive(shutter).ByChannels(rig.Control($"swing_shutter_{i}").Under(Top.Control).PlacedAt(shutter).LimitTurn(Axis.Y, 0, 160));
            }

            return this;
        }

        public Tower Door(string name, Vector3 hinge, float opensTo)
        {
            var (foot, control) = storeys[0];
            var door = foot.Child(name, at: hinge);
            rig.Drive(door).ByMatrix(rig.Control($"swing_{name}").Under(control).PlacedAt(door).LimitTurn(Axis.Y, 0, opensTo));
            return this;
        }

        public void Up() => rig.Label("tower_label", $"{storeys.Count} storeys, {lamps.Count} lamps").Under(world).ShownBy(1);

        public sealed class LampBuilder(Tower tower, Joint joint, Control control)
        {
            private Control? leader;

            public LampBuilder Spinning()
            {
                control.Lock(Channels.All).Unlock(Channels.TurnY);
                return this;
            }

            public LampBuilder Trailing(string other)
            {
                leader = tower.lamps[other];
                return this;
            }

            public Tower Done()
            {
                if (leader is { } before)
                {
                    var trail = control.Switch("trail", 0.5f).AlsoOn(before);
                    tower.rig.Blend(joint).From(before, trail).From(control, trail.Inverse);
                }
                else
                {
                    tower.rig.Drive(joint).ByChannels(control);
                }

                return tower;
            }
        }
    }
}
