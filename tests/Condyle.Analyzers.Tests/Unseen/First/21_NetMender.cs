using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.First.R21;

/// <summary>A net mender: a torso on a stool and two hands of five fingers; the studio's naming standard is kept by one formatter.</summary>
public sealed class NetMender : IRigDefinition
{
    private const string JointFormat = "{0}_{1}{2}";
    private const string ControlFormat = "{0}_{1,-1}_ctl";
    private static readonly string[] Fingers = ["thumb", "index", "middle", "ring", "little"];

    private readonly StringBuilder log = new();

    public void Define(RigDraft rig)
    {
        log.Clear();
        var stool = rig.Skeleton("net_mender").Root(Joint("stool", 0, null), JointRole.Helper);
        var seat = rig.Control(Control("stool", "seat"));
        rig.Drive(stool).ByChannels(seat);

        var above = seat;
        var last = stool;
        foreach (var part in "pelvis spine chest neck head".Split(' '))
        {
            var height = part == "pelvis" ? 0.5f : 0.17f;
            last = last.Child(Joint(part, 0, null), at: new Vector3(0, height, 0.01f));
            above = Turn(rig, last, above);
            if (part == "chest")
                Arms(rig, last, above);
        }

        rig.Label(string.Format(CultureInfo.InvariantCulture, "{0}_label", "mender"), log.ToString().TrimEnd(',', ' ')).Under(seat);
    }

    private void Arms(RigDraft rig, Joint chest, Control chestControl)
    {
        foreach (var side in Side.Both)
        {
            var shoulder = chest.Child(Joint("shoulder", 0, side), at: new Vector3(0.18f * side.Sign, 0.1f, 0));
            var elbow = shoulder.Child(Joint("elbow", 0, side), at: new Vector3(0.08f * side.Sign, -0.26f, -0.04f));
            var wrist = elbow.Child(Joint("wrist", 0, side), at: new Vector3(-0.04f * side.Sign, 0.02f, 0.25f));
            var arm = rig.Chain(shoulder, wrist);

            var group = rig.Group(Group("arm", side)).PlacedAt(chestControl);
            rig.Drive(group).ByMatrix(chestControl);
            var ik = arm.Copy("ik").Under(group);
            var needle = rig.Control(Control("needle", side.ToString())).Under(chestControl).PlacedAt(wrist);
            var pole = rig.Control(Control("elbow_pole", side.ToString())).Under(chestControl).PlacedAt(ik.PolePoint(0.4f));
            rig.TwoBone(ik).Reach(needle).Face(pole);
            rig.Blend(arm).From(ik, 1f);

            for (var finger = 0; finger < Fingers.Length; finger++)
                Finger(rig, wrist, needle, side, finger);
        }
    }

    private void Finger(RigDraft rig, Joint wrist, Control hand, Side side, int finger)
    {
        var bones = finger == 0 ? 2 : 3;
        var parent = wrist;
        var above = hand;
        for (var bone = 1; bone <= bones; bone++)
        {
            var at = bone == 1 ? new Vector3(side.Sign * (0.04f - 0.02f * finger), 0, finger == 0 ? 0.03f : 0.09f) : new Vector3(0, -0.005f, 0.04f / bone);
            parent = parent.Child(Joint(Fingers[finger], bone, side), at: at);
            above = Turn(rig, parent, above).Lock(Channels.Move | Channels.TurnY).LimitTurn(Axis.X, -10, bone == 1 ? 80 : 95);
        }

        log.AppendFormat(CultureInfo.InvariantCulture, "{0:D2}:{1}, ", finger * 2 + (side == Side.Left ? 0 : 1), Fingers[finger][..2]);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var words = new Queue<string>(joint.Name.Split('_', StringSplitOptions.RemoveEmptyEntries));
        var control = rig.Control(Control(words.Dequeue(), string.Concat(words))).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static string Joint(string part, int number, Side? side)
    {
        var digits = number > 0 ? number.ToString("00", CultureInfo.InvariantCulture) : "";
        var text = string.Format(CultureInfo.InvariantCulture, JointFormat, Pascal(part), digits, Suffix(side));
        return text.TrimEnd('_');
    }

    private static string Control(string part, string detail) =>
        string.Format(CultureInfo.InvariantCulture, ControlFormat, part.ToLower(CultureInfo.InvariantCulture), detail);

    private static string Group(string part, Side side)
    {
        var builder = new StringBuilder(part, 32);
        builder.Append('_').Append(side).Append("_group");
        builder[0] = char.ToLowerInvariant(builder[0]);
        builder.Insert(0, "mender_").Replace("__", "_");
        return builder.ToString();
    }

    private static string Suffix(Side? side) => side == null ? string.Empty : "_" + char.ToUpperInvariant(side.ToString()[0]);

    private static string Pascal(string words)
    {
        var builder = new StringBuilder();
        var upper = true;
        foreach (var letter in words)
        {
            if (letter == '_')
            {
                upper = true;
                continue;
            }

            builder.Append(upper ? char.ToUpperInvariant(letter) : letter);
            upper = false;
        }

        return builder.ToString();
    }
}
