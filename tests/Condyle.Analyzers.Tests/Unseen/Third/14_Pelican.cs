using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R14;

internal static class PelicanWords
{
    extension(Joint joint)
    {
        public Joint Then(string name, float x = 0, float y = 0, float z = 0) => joint.Child(name, at: new Vector3(x, y, z));

        public Joint Then(string name, Side side, float x = 0, float y = 0, float z = 0) => joint.Then($"{name}_{side}", x * side.Sign, y, z);

        public Chain To(Joint tip, RigDraft rig) => rig.Chain(joint, tip);
    }

    extension(Control control)
    {
        public Control OnlyTurns => control.Lock(Channels.Move);

        public Control OnlyMoves => control.Lock(Channels.Turn);

        public Control Hinged(Axis axis, float from, float to) => control.OnlyTurns.LimitTurn(axis, from, to);

        public Control Moving(RigDraft rig, Joint joint)
        {
            rig.Drive(joint).ByChannels(control);
            return control;
        }

        public (Weight On, Weight Off) Choice(string name, float atRest = 0f)
        {
            var given = control.Switch(name, atRest);
            return (given, given.Inverse);
        }
    }

    extension(RigDraft rig)
    {
        public Control Handle(string name, Node under, Node at) => rig.Control(name).Under(under).PlacedAt(at);

        public Group Box(string name, Node under, Node at) => rig.Group(name + "_group").Under(under).PlacedAt(at);

        public Control Strung(IEnumerable<Joint> joints, Control from, string verb, Func<Control, Control>? also = null)
        {
            foreach (var joint in joints)
            {
                from = rig.Handle($"{verb}_{joint}", from, joint).Moving(rig, joint);
                from = also is null ? from : also(from);
            }

            return from;
        }
    }

    extension(Chain chain)
    {
        public IEnumerable<(Joint Joint, CopyJoint Copied)> ZipWith(Copy copy)
        {
            foreach (var joint in chain)
                yield return (joint, copy.Of(joint));
        }
    }
}

/// <summary>The pelican on the bollard.</summary>
public sealed class Pelican : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("pelican").Root("pelvis", at: new Vector3(0, 0.42f, 0));
        var chest = pelvis.Then("chest", y: 0.05f, z: 0.18f);
        var neck = chest.Then("neck_1", y: 0.1f, z: 0.06f);
        var swan = neck.Then("neck_2", y: 0.11f, z: -0.03f);
        var crook = swan.Then("neck_3", y: 0.1f, z: 0.02f);
        var head = crook.Then("head", y: 0.05f, z: 0.06f);
        var bill = head.Then("bill_upper", z: 0.05f);
        var jaw = head.Then("bill_lower", y: -0.015f, z: 0.04f);
        Joint[] pouch = [jaw.Then("pouch_1", y: -0.02f, z: 0.06f), jaw.Then("pouch_2", y: -0.025f, z: 0.12f), jaw.Then("pouch_3", y: -0.015f, z: 0.18f)];
        var tail = pelvis.Then("tail", y: 0.01f, z: -0.16f);

        var world = rig.Control("world");
        var body = rig.Handle("body", world, pelvis).Moving(rig, pelvis);
        var breast = rig.Handle("breast", body, chest).Moving(rig, chest).OnlyTurns;
        var last = rig.Strung([neck, swan, crook], breast, "bend", static control => control.OnlyTurns);
        var nod = rig.Handle("nod", last, head).Moving(rig, head);
        rig.Handle("bill", nod, bill).Moving(rig, bill).Hinged(Axis.X, -5, 5);
        var gape = rig.Handle("gape", nod, jaw).Moving(rig, jaw).Hinged(Axis.X, 0, 60);
        foreach (var part in pouch)
            rig.Handle($"{part}_sag", gape, part).Moving(rig, part).OnlyMoves.LimitMove(Axis.Y, -0.12f, 0.02f);
        rig.Handle("wag", body, tail).Moving(rig, tail).Hinged(Axis.X, -30, 40);

        foreach (var side in Side.Both)
        {
            var collar = chest.Then("collar", side, x: 0.04f, y: 0.06f);
            var shoulder = collar.Then("shoulder", side, x: 0.05f);
            var elbow = shoulder.Then("elbow", side, x: 0.3f, z: -0.05f);
            var wrist = elbow.Then("wrist", side, x: 0.34f, z: 0.06f);
            var hip = pelvis.Then("hip", side, x: 0.06f, y: -0.05f);
            var knee = hip.Then("knee", side, y: -0.1f, z: 0.03f);
            var ankle = knee.Then("ankle", side, y: -0.16f, z: -0.05f);

            var shrug = rig.Handle($"shrug_{side}", breast, collar).Moving(rig, collar);
            var wing = shoulder.To(wrist, rig);
            var box = rig.Box($"wing_{side}", shrug, shoulder);
            var (open, folded) = (wing.Copy("open").Under(box), wing.Copy("folded").Under(box));

            Limb(open, shrug, "spread");
            Limb(folded, shrug, "fold");
            var (spread, shut) = shrug.Choice("open");
            rig.Blend(wing).From(open, spread).From(folded, shut);
            rig.Label($"open_{side}_label", "OPEN").Under(shrug).ShownBy(spread);
            rig.Label($"shut_{side}_label", "FOLDED").Under(shrug).ShownBy(shut);

            var primaries = new List<Joint>();
            for (var i = 1; i <= 8; i++)
                primaries.Add(wrist.Then($"primary_{i}", side, x: 0.03f * i, z: -0.01f * i));
            foreach (var feather in primaries)
                rig.Handle($"{feather}_fan", wrist, feather).Moving(rig, feather).OnlyTurns.LimitTurn(Axis.Y, -20, 20);

            var leg = hip.To(ankle, rig).Bending(new Vector3(0, 0, 1));
            var step = leg.Copy("ik").Under(rig.Box($"leg_{side}", body, hip));
            var foot = rig.Handle($"foot_{side}", world, ankle);
            rig.TwoBone(step).Reach(foot).Face(rig.Control($"knee_pole_{side}").Under(body).PlacedAt(step.PolePoint(0.2f)).OnlyMoves);
            rig.Blend(leg).From(step, 1f);

            void Limb(Copy copy, Control from, string verb)
            {
                foreach (var (joint, copied) in wing.ZipWith(copy))
                {
                    from = rig.Handle($"{verb}_{joint}", from, joint).OnlyTurns;
                    rig.Drive(copied).ByChannels(from);
                }
            }
        }
    }
}
