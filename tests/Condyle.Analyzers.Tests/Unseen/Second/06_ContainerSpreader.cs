using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R06;

public sealed class ContainerSpreader : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var corners = new[]
        {
            new { Name = "fore", Z = 1f },
            new { Name = "aft", Z = -1f },
        }.SelectMany(end => Side.Both.Select(side => new { Key = $"{end.Name}_{side}", X = side.Sign * 1.2f, Z = end.Z * 2.9f })).ToList();

        // skeleton
        var trolley = rig.Skeleton("container_spreader").Root("trolley", at: new(0, 18, 0));
        var frame = trolley.Child("frame", at: new(0, -9, 0));
        var beams = new Dictionary<string, Joint>
        {
            ["fore"] = frame.Child("beam_fore", at: new(0, 0, 1.5f)),
            ["aft"] = frame.Child("beam_aft", at: new(0, 0, -1.5f)),
        };
        var locks = corners.ToDictionary(
            corner => corner.Key,
            corner => beams[corner.Key.Split('_')[0]].Child($"lock_{corner.Key}", at: new(corner.X, -0.1f, corner.Z - MathF.Sign(corner.Z) * 1.5f)));

        // helpers
        Control handle(string name, Node parent, Node at) => rig.Control(name).Under(parent).PlacedAt(at);

        Control drive(Joint joint, string name, Node parent, Action<Control>? setup = null)
        {
            var control = handle(name, parent, joint);
            setup?.Invoke(control);
            rig.Drive(joint).ByChannels(control);
            return control;
        }

        Action<Control> only(Channels channels) => control => control.Lock(Channels.Move | Channels.Turn).Unlock(channels);

        // rails, trolley, frame
        var rails = rig.Control("rails");
        var trolleyControl = drive(trolley, "move_trolley", rails, c => c.Lock(Channels.Turn | Channels.MoveY | Channels.MoveX).LimitMove(Axis.Z, -40, 40));
        var hoist = drive(frame, "hoist", trolleyControl, only(Channels.Move | Channels.TurnY));

        // telescopic beams
        var beamControls = beams
            .Select(beam => (beam.Key, Control: drive(beam.Value, $"extend_{beam.Key}", hoist, only(Channels.MoveZ))))
            .ToDictionary(pair => pair.Key, pair => pair.Control);

        // twist locks: pushed down all together, or each on its own beam
        var all = handle("all_locks", hoist, frame).Lock(Channels.All).Unlock(Channels.MoveY);
        var single = all.Switch("single");

        corners.ForEach(corner =>
        {
            var (key, joint) = (corner.Key, locks[corner.Key]);
            var beam = beamControls[key.StartsWith("fore") ? "fore" : "aft"];

            var shared = rig.Group($"shared_{key}_group").Under(all).PlacedAt(joint);
            var own = handle($"turn_lock_{key}", beam, joint).Lock(Channels.Move);

            rig.Blend(joint)
                .From(shared, single.Inverse)
                .From(own, single);
        });

        new (string Text, Weight When)[] { ("ALL", single.Inverse), ("SINGLE", single) }
            .ToList()
            .ForEach(state => rig.Label($"{state.Text.ToLowerInvariant()}_label", state.Text).Under(hoist).ShownBy(state.When));
    }
}
