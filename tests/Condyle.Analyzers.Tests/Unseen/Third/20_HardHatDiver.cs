using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R20;

public class DiverException : Exception
{
    public DiverException(string message)
        : base(message)
    {
    }
}

public class NoSuchJointException : DiverException
{
    public NoSuchJointException(string joint)
        : base("No joint '" + joint + "'") => Joint = joint;

    public string Joint { get; }
}

public class HoseEndedException : DiverException
{
    public HoseEndedException(int length)
        : base("The hose ended after " + length) => Length = length;

    public int Length { get; }
}

/// <summary>The diver in the old copper helmet, with lead boots and an air hose.</summary>
public class HardHatDiver : IRigDefinition
{
    private const int HoseLength = 22;

    private Dictionary<string, Joint> joints = new();
    private Dictionary<string, Control> controls = new();

    public void Define(RigDraft rig)
    {
        joints = new Dictionary<string, Joint>();
        controls = new Dictionary<string, Control>();

        var root = rig.Skeleton("hard_hat_diver").Root("pelvis", at: new Vector3(0, 0.9f, 0));
        Remember(root);
        try
        {
            Put("pelvis", "chest", 0, 0.35f, 0);
            Put("chest", "helmet", 0, 0.3f, 0);
            Put("helmet", "faceplate", 0, 0.05f, 0.16f);
            Put("helmet", "valve", 0.12f, 0.08f, -0.05f);
            Put("chest", "weights_front", 0, 0, 0.15f);
            Put("chest", "weights_back", 0, 0, -0.15f);
            foreach (var side in Side.Both)
            {
                Put("chest", "shoulder_" + side, 0.22f * side.Sign, 0.18f, 0);
                Put("shoulder_" + side, "elbow_" + side, 0.3f * side.Sign, 0, -0.03f);
                Put("elbow_" + side, "wrist_" + side, 0.27f * side.Sign, 0, 0.03f);
                Put("pelvis", "hip_" + side, 0.12f * side.Sign, -0.05f, 0);
                Put("hip_" + side, "knee_" + side, 0, -0.4f, 0.02f);
                Put("knee_" + side, "ankle_" + side, 0, -0.38f, -0.02f);
                Put("ankle_" + side, "boot_" + side, 0, -0.08f, 0.1f);
            }
        }
        catch (NoSuchJointException e)
        {
            throw new InvalidOperationException("The diver's table is in the wrong order at " + e.Joint, e);
        }

        controls["world"] = rig.Control("world");
        Handle(rig, "pelvis", "world");
        Handle(rig, "chest", "pelvis");
        Handle(rig, "helmet", "chest");
        Handle(rig, "faceplate", "helmet");
        Handle(rig, "valve", "helmet");
        Handle(rig, "weights_front", "chest");
        Handle(rig, "weights_back", "breastplate"); // falls back to world when there is no such handle

        foreach (var side in Side.Both)
        {
            Limb(rig, "arm_" + side, "wrist_" + side, "shoulder_" + side, "chest");
            Limb(rig, "leg_" + side, "hip_" + side, "ankle_" + side, "pelvis");
            Handle(rig, "boot_" + side, "leg_" + side);
        }

        try
        {
            var last = Find("valve");
            for (var i = 0; ; i++)
                last = Link(rig, last, i);
        }
        catch (HoseEndedException e)
        {
            rig.Label("hose_label", "HOSE " + e.Length).Under(controls["world"]);
        }
        finally
        {
            controls.Clear();
        }
    }

    private Joint Link(RigDraft rig, Joint above, int index)
    {
        if (index >= HoseLength)
            throw new HoseEndedException(index);
        var link = above.Child("hose_" + index, JointRole.Helper, new Vector3(0, 0.25f, -0.02f));
        Remember(link);
        Handle(rig, link.Name, above.Name);
        return link;
    }

    private void Limb(RigDraft rig, string name, string from, string to, string above)
    {
        Chain chain;
        try
        {
            chain = rig.Chain(Find(from), Find(to));
        }
        catch (ArgumentException)
        {
            // the other way round, then
            chain = rig.Chain(Find(to), Find(from));
        }

        var holder = rig.Group(name + "_group").Under(controls[above]).PlacedAt(chain.Root);
        var ik = chain.Copy("ik").Under(holder);
        var fk = chain.Copy("fk").Under(holder);
        var goal = rig.Control(name + "_goal").Under(controls["world"]).PlacedAt(chain.Tip);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control(name + "_pole").Under(controls["world"]).PlacedAt(ik.PolePoint(0.5f)));
        controls[name] = goal;

        Node parent = controls[above];
        foreach (var pair in joints)
        {
            try
            {
                var copied = fk.Of(pair.Value);
                var turn = rig.Control("fk_" + pair.Key).Under(parent).PlacedAt(pair.Value);
                rig.Drive(copied).ByChannels(turn);
                parent = turn;
            }
            catch (ArgumentException)
            {
                continue; // not a joint of this limb
            }
        }

        var amount = goal.Switch("fk");
        rig.Blend(chain).From(ik, amount).From(fk, amount);
    }

    private void Handle(RigDraft rig, string joint, string above)
    {
        Control parent;
        try
        {
            parent = controls[above];
        }
        catch (KeyNotFoundException)
        {
            parent = controls["world"];
        }

        var control = rig.Control(joint + "_handle").Under(parent).PlacedAt(Find(joint));
        rig.Drive(Find(joint)).ByChannels(control);
        controls[joint] = control;
    }

    private void Put(string above, string name, float x, float y, float z) => Remember(Find(above).Child(name, at: new Vector3(x, y, z)));

    private void Remember(Joint joint)
    {
        if (!joints.TryAdd(joint.Name, joint))
            throw new DiverException("There are two joints '" + joint.Name + "'");
    }

    private Joint Find(string name) => joints.TryGetValue(name, out var joint) ? joint : throw new NoSuchJointException(name);
}
