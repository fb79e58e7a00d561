using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.Second.R25;

/// <summary>Anchor winch on the foredeck. Part titles are those of the manual ("Chain Wheel (Port)"), names are made of them.</summary>
public sealed class AnchorWinch : IRigDefinition
{
    private static readonly Dictionary<string, string> SideWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Port"] = "left",
        ["Starboard"] = "right",
    };

    private readonly SortedDictionary<string, Joint> jointsByName = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedNames = [];

    public void Define(RigDraft rig)
    {
        const string title = "Anchor Winch";
        var bed = rig.Skeleton(ToName(title)).Root(ToName("Bed Plate"));
        jointsByName.Add(bed.Name, bed);

        AddPart("Main Shaft", bed, new Vector3(0f, 0.7f, 0f));
        foreach (var word in SideWords.Keys)
        {
            var sign = SideWords[word] == "left" ? 1f : -1f;
            AddPart($"Chain Wheel ({word})", jointsByName["main_shaft"], new Vector3(0.8f * sign, 0f, 0f));
            AddPart($"Brake Band ({word})", bed, new Vector3(1.1f * sign, 0.7f, 0.1f));
            AddPart($"Warping Head ({word})", jointsByName["main_shaft"], new Vector3(1.6f * sign, 0f, 0f));
        }

        var winch = rig.Control(Unique("winch")).PlacedAt(bed);
        rig.Drive(bed).ByChannels(winch);

        var controls = new Dictionary<string, Control> { { bed.Name, winch } };
        foreach (var (name, joint) in jointsByName)
        {
            if (name == bed.Name)
                continue;

            var verb = name.IndexOf("brake", StringComparison.Ordinal) >= 0 ? "close" : "turn";
            var control = rig.Control(Unique(string.Join('_', verb, name)));
            control.PlacedAt(joint).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            controls[name] = control;
            rig.Drive(joint).ByChannels(control);
        }

        // Wheels and heads turn with the shaft unless their clutch is out; the brakes stay on the bed.
        foreach (var name in controls.Keys)
        {
            if (name.StartsWith("chain_wheel", StringComparison.Ordinal) || name.StartsWith("warping_head", StringComparison.Ordinal))
                Clutch(rig, name, controls);
            else if (name != bed.Name)
                controls[name].Under(winch);
        }
    }

    private void Clutch(RigDraft rig, string name, Dictionary<string, Control> controls)
    {
        var onShaft = rig.Group(Unique(name + "_on_shaft")).Under(controls["main_shaft"]).PlacedAt(jointsByName[name]);
        var onBed = rig.Group(Unique(name + "_on_bed_group")).Under(controls["bed_plate"]).PlacedAt(jointsByName[name]);
        var holder = rig.Group(Unique(name + "_group"));

        var clutch = controls[name].Switch("clutch", atRest: 1f);
        rig.Blend(holder).From(onShaft, clutch).From(onBed, clutch.Inverse);
        controls[name].Under(holder);

        var text = new StringBuilder()
            .Append(CultureInfo.InvariantCulture.TextInfo.ToTitleCase(name.Replace('_', ' ')))
            .Append(": ")
            .Append("clutch in")
            .ToString();
        rig.Label(Unique($"{name}_clutch_label"), text).Under(holder).ShownBy(clutch);
    }

    private void AddPart(string title, Joint parent, Vector3 at)
    {
        var name = ToName(title);
        jointsByName[name] = parent.Child(Unique(name), at: at);
    }

    private string Unique(string name)
    {
        var candidate = name;
        for (var number = 2; !usedNames.Add(candidate); number++)
            candidate = name + "_" + number.ToString(CultureInfo.InvariantCulture);
        return candidate;
    }

    /// <summary>"Chain Wheel (Port)" becomes "chain_wheel_left".</summary>
    private static string ToName(string title)
    {
        var side = string.Empty;
        var open = title.IndexOf('(');
        if (open >= 0)
        {
            var word = title.Substring(open + 1, title.IndexOf(')') - open - 1);
            side = "_" + SideWords[word];
            title = title[..open].TrimEnd();
        }

        var name = new StringBuilder(title.Length);
        foreach (var character in title)
            name.Append(char.IsWhiteSpace(character) ? '_' : char.ToLowerInvariant(character));
        return name + side;
    }
}
