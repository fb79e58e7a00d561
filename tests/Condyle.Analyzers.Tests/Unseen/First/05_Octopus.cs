using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R05;

/// <summary>A quayside octopus: eight tapering arms around the mantle, each a fold over its segments.</summary>
public sealed class Octopus : IRigDefinition
{
    private const int Arms = 8;
    private const int Segments = 5;

    public void Define(RigDraft rig)
    {
        var mantle = rig.Skeleton("octopus").Root("mantle", at: new Vector3(0, 0.3f, 0));
        var body = rig.Control("body").PlacedAt(mantle);
        rig.Drive(mantle).ByChannels(body);

        var arms = Enumerable.Range(0, Arms)
            .Select(index => (Index: index, Angle: index * MathF.Tau / Arms))
            .Select(arm => (Name: NameOf(arm.Index), Turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, arm.Angle)))
            .Select(arm => (arm.Name, Base: mantle.Child($"{arm.Name}_base", at: Vector3.Transform(Vector3.UnitZ, arm.Turned) * 0.12f, turned: arm.Turned)))
            .ToDictionary(arm => arm.Name, arm => Grow(arm.Name, arm.Base));

        var curls = arms.ToDictionary(arm => arm.Key, arm => Pose(arm.Key, arm.Value));
        curls.Values.Zip(curls.Values.Skip(1).Append(curls.Values.First()))
            .Select((pair, index) => (pair.First, pair.Second, index))
            .ToList()
            .ForEach(web => Web(web.index, web.First, web.Second));

        var eyes =
            from side in Side.Both
            let socket = mantle.Child($"eye_{side}", at: new Vector3(0.06f * side.Sign, 0.1f, 0.09f))
            let look = rig.Control($"look_{side}").Under(body).PlacedAt(socket).LimitTurn(Axis.X, -25, 25).LimitTurn(Axis.Y, -25, 25)
            select (socket, look);
        foreach (var (socket, look) in eyes)
            rig.Drive(socket).ByChannels(look);

        IReadOnlyList<Joint> Grow(string name, Joint root) =>
            Enumerable.Range(1, Segments)
                .Select(segment => (segment, length: 0.14f * MathF.Pow(0.82f, segment)))
                .Aggregate(new List<Joint> { root }, (grown, next) =>
                {
                    grown.Add(grown[^1].Child($"{name}_{next.segment}", at: new Vector3(0, -0.01f * next.segment, next.length)));
                    return grown;
                });

        Control Pose(string name, IReadOnlyList<Joint> joints)
        {
            var curl = rig.Control($"curl_{name}").Under(body).PlacedAt(joints[0]).Lock(Channels.Move);
            rig.Drive(joints[0]).ByChannels(curl);
            joints.Skip(1).Aggregate(curl, (above, joint) =>
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(joint).ByChannels(turn);
                return turn;
            });
            return curl;
        }

        void Web(int index, Control one, Control other)
        {
            var web = mantle.Child($"web_{index}", at: Middle(index) * 0.16f);
            var (first, second) = (Holder(one), Holder(other));
            rig.Blend(web).From(first, 0.5f).From(second, 0.5f);

            Group Holder(Control curl) => rig.Group($"web_{index}_on_{curl.Name}_group").Under(curl).PlacedAt(web);
        }
    }

    private static string NameOf(int index) => (index % 2 == 0 ? "arm_" : "tentacle_") + (char)('a' + index);

    private static Vector3 Middle(int index) =>
        new[] { index, index + 1 }
            .Select(at => at * MathF.Tau / Arms)
            .Select(angle => new Vector3(MathF.Sin(angle), 0, MathF.Cos(angle)))
            .Aggregate(Vector3.Zero, (sum, each) => sum + each) is var both && both.LengthSquared() > 0
                ? Vector3.Normalize(both)
                : Vector3.UnitZ;
}
