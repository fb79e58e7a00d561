using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R09;

/// <summary>
/// Rig for the harbour seal (second delivery).
/// </summary>
public sealed class HarbourSeal : IRigDefinition
{
    #region Constants

    private const int SpineJointCount = 6;
    private const float SpineJointSpacing = 0.22f;
    private const string ControlPrefix = "turn";

    #endregion

    #region Public methods

    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        ArgumentNullException.ThrowIfNull(rig);

        var root = rig.Skeleton("harbour_seal").Root("root");
        var spine = CreateSpine(root);
        var flippers = new Dictionary<Side, IList<Joint>>
        {
            { Side.Left, CreateFlipper(spine[4], Side.Left) },
            { Side.Right, CreateFlipper(spine[4], Side.Right) },
        };

        var world = rig.Control("world").PlacedAt(root);
        rig.Drive(root).ByChannels(world);

        var spineControls = ControlSpine(rig, spine, world);
        var chest = spineControls[4];

        foreach (KeyValuePair<Side, IList<Joint>> entry in flippers)
        {
            ControlFlipper(rig, entry.Value, entry.Key, chest);
        }

        CreateLookAround(rig, spine[spine.Count - 1], spineControls);
    }

    #endregion

    #region Skeleton

    /// <summary>Creates the spine from tail to head.</summary>
    private static IList<Joint> CreateSpine(Joint root)
    {
        var result = new List<Joint>(SpineJointCount);
        var parent = root;
        for (var index = 0; index < SpineJointCount; index++)
        {
            var offset = index == 0 ? new Vector3(0f, 0.2f, -0.6f) : new Vector3(0f, 0.02f, SpineJointSpacing);
            parent = parent.Child($"spine_{index + 1:00}", at: offset);
            result.Add(parent);
        }

        return result;
    }

    /// <summary>Creates one flipper.</summary>
    private static IList<Joint> CreateFlipper(Joint parent, Side side)
    {
        ArgumentNullException.ThrowIfNull(side);

        var upper = parent.Child($"flipper_upper_{side}", at: new Vector3(0.16f * side.Sign, -0.08f, 0.05f));
        var lower = upper.Child($"flipper_lower_{side}", at: new Vector3(0.14f * side.Sign, -0.04f, -0.02f));
        var end = lower.Child($"flipper_end_{side}", at: new Vector3(0.12f * side.Sign, 0f, -0.06f));
        return new[] { upper, lower, end };
    }

    #endregion

    #region Controls

    private static IReadOnlyList<Control> ControlSpine(RigDraft rig, IList<Joint> spine, Control world)
    {
        var controls = new List<Control>(spine.Count);
        foreach (var joint in spine)
        {
            var parent = controls.Count > 0 ? controls[controls.Count - 1] : world;
            var control = rig.Control($"{ControlPrefix}_{joint.Name}").Under(parent).PlacedAt(joint);
            if (controls.Count > 0)
            {
                control.Lock(Channels.Move);
            }

            rig.Drive(joint).ByChannels(control);
            controls.Add(control);
        }

        return controls.AsReadOnly();
    }

    private static void ControlFlipper(RigDraft rig, IList<Joint> joints, Side side, Control chest)
    {
        if (joints.Count != 3)
        {
            throw new ArgumentException("A flipper has three joints.", nameof(joints));
        }

        var chain = rig.Chain(joints[0], joints[2]);
        var holder = rig.Group($"flipper_{side}_group").Under(chest).PlacedAt(chain.Root);

        var ik = chain.Copy("ik").Under(holder);
        var target = rig.Control($"flipper_{side}").PlacedAt(chain.Tip);
        var pole = rig.Control($"flipper_pole_{side}").Under(chest).PlacedAt(ik.PolePoint(0.3f));
        rig.TwoBone(ik).Reach(target).Face(pole);

        var fk = chain.Copy("fk").Under(holder);
        Node parent = holder;
        foreach (var joint in joints)
        {
            var control = rig.Control($"{ControlPrefix}_{joint.Name}").Under(parent).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            parent = control;
        }

        // On land the seal leans on its flippers (IK); in the water it paddles (FK).
        var swims = target.Switch("swims", 1f);
        rig.Blend(chain).From(fk, swims).From(ik, swims.Inverse);
        rig.Label($"land_label_{side}", "land").Under(target).ShownBy(swims.Inverse);
        rig.Label($"water_label_{side}", "water").Under(target).ShownBy(swims);
    }

    private static void CreateLookAround(RigDraft rig, Joint head, IReadOnlyList<Control> spineControls)
    {
        var jaw = head.Child("jaw", at: new Vector3(0f, -0.03f, 0.06f));
        var control = rig.Control("open_jaw").Under(spineControls[spineControls.Count - 1]).PlacedAt(jaw);
        control.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        control.LimitTurn(Axis.X, 0f, 28f);
        rig.Drive(jaw).ByChannels(control);
    }

    #endregion
}
