using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R12;

/// <summary>Lighthouse at the pier head: lens, shutters and door. The counts are checked here because the export test compares them.</summary>
public sealed class Lighthouse : IRigDefinition
{
    private const int ExpectedShutters = 8;
    private const int ExpectedControls = ExpectedShutters + 5;

    // name, parent, height, locked channels, (from, to) about Y or null when it may go round
    private static readonly object[][] Cases =
    {
        new object[] { "lantern", "tower", 21f, Channels.Move | Channels.TurnX | Channels.TurnZ, 0f, 0f },
        new object[] { "lens", "lantern", 1.5f, Channels.Move | Channels.TurnX | Channels.TurnZ, 0f, 0f },
        new object[] { "roof", "lantern", 3f, Channels.All, 0f, 0f },
        new object[] { "door", "tower", 0.2f, Channels.Move | Channels.TurnX | Channels.TurnZ, -5f, 110f },
    };

    private readonly Dictionary<string, (Joint Joint, Control Control)> built = new();

    public void Define(RigDraft rig)
    {
        // arrange
        var tower = rig.Skeleton("lighthouse").Root("tower");
        var place = rig.Control("place_tower").PlacedAt(tower);
        rig.Drive(tower).ByChannels(place);
        built["tower"] = (tower, place);

        // act
        foreach (var row in Cases)
        {
            Add(rig, (string)row[0], (string)row[1], (float)row[2], (Channels)row[3], (float)row[4], (float)row[5]);
        }

        AddShutters(rig);

        // assert
        var shutters = built.Keys.Count(name => name.StartsWith("shutter_", StringComparison.Ordinal));
        ExpectEqual(ExpectedShutters, shutters, "shutters");
        ExpectEqual(ExpectedControls, built.Count, "controls");
        ExpectEqual(built.Count, built.Values.Select(part => part.Control.Name).Distinct().Count(), "distinct control names");
    }

    private void Add(RigDraft rig, string name, string parentName, float height, Channels locked, float from, float to)
    {
        Debug.Assert(built.ContainsKey(parentName), $"{parentName} comes before {name}");

        var parent = built[parentName];
        var joint = parent.Joint.Child(name, at: Vector3.UnitY * height);
        var control = rig.Control($"turn_{name}").Under(parent.Control).PlacedAt(joint).Lock(locked);
        if (from != to)
        {
            control.LimitTurn(Axis.Y, from, to);
        }

        rig.Drive(joint).ByChannels(control);
        built.Add(name, (joint, control));
    }

    private void AddShutters(RigDraft rig)
    {
        var (lanternJoint, lanternControl) = built["lantern"];
        var group = rig.Group("shutters_group").Under(lanternControl).PlacedAt(lanternJoint);

        var all = Enumerable.Range(0, ExpectedShutters).Select(i => (Index: i, Angle: i * 360d / ExpectedShutters));
        foreach (var (index, angle) in all)
        {
            var radians = angle * Math.PI / 180d;
            var at = new Vector3((float)(1.8 * Math.Sin(radians)), 0.4f, (float)(1.8 * Math.Cos(radians)));
            var turned = Quaternion.CreateFromYawPitchRoll((float)radians, 0f, 0f);

            var joint = lanternJoint.Child($"shutter_{index}", at: at, turned: turned);
            var control = rig.Control($"open_shutter_{index}").Under(group).PlacedAt(joint)
                .Lock(Channels.Move | Channels.TurnY | Channels.TurnZ)
                .LimitTurn(Axis.X, 0f, 90f);
            rig.Drive(joint).ByChannels(control);
            built.Add(joint.Name, (joint, control));
        }
    }

    private static void ExpectEqual<T>(T expected, T actual, string what)
        where T : IEquatable<T>
    {
        if (!expected.Equals(actual))
        {
            throw new InvalidOperationException($"Expected {expected} {what}, but there are {actual}.");
        }
    }
}
