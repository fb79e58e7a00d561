using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R26;

/// <summary>
/// The chain ferry across the harbour mouth. Its length differs between the shows it is used in, so builds may say
/// <c>FERRY_BAYS</c>, <c>FERRY_SIDE</c> and <c>FERRY_LABELS</c>; what they don't say, or say badly, has a default.
/// </summary>
public sealed class ChainFerry : IRigDefinition
{
    private const int DefaultBays = 6;
    private const int MostBays = 20;

    private readonly record struct Settings(int Bays, IReadOnlyList<Side> Ramps, bool HasLabels)
    {
        public static Settings Read()
        {
            var bays = ReadInt("FERRY_BAYS") is { } asked && asked > 0 ? Math.Min(asked, MostBays) : DefaultBays;
            IReadOnlyList<Side> ramps = Environment.GetEnvironmentVariable("FERRY_SIDE")?.Trim().ToLowerInvariant() switch
            {
                "left" => [Side.Left],
                "right" => [Side.Right],
                _ => Side.Both,
            };
            var quiet = Environment.GetCommandLineArgs().Skip(1).Contains("--no-labels");
            var labels = Environment.GetEnvironmentVariable("FERRY_LABELS") is not ("0" or "false" or "no");
            return new Settings(bays, ramps, labels && !quiet);
        }

        private static int? ReadInt(string name) =>
            int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    public void Define(RigDraft rig)
    {
        var watch = Stopwatch.StartNew();
        var settings = Settings.Read();

        var world = rig.Control("world");
        var skeleton = rig.Skeleton("chain_ferry");
        var deck = skeleton.Root("deck", at: new Vector3(0, 0.8f, 0));
        var ferry = Follow(rig, "ferry", world, deck).Lock(Channels.Turn).LimitMove(Axis.X, -80, 80);
        var heave = rig.Control("heave").Under(ferry).PlacedAt(deck).LimitTurn(Axis.X, -8, 8).LimitTurn(Axis.Z, -8, 8);

        var bays = BuildBays(rig, deck, heave, settings.Bays);
        foreach (var side in settings.Ramps)
            BuildRamp(rig, side, deck, heave, settings.HasLabels);
        BuildChain(rig, skeleton, world, ferry, settings.Bays * 4);
        BuildFerryman(rig, world, bays[0].Control, bays[0].Joint);

        if (settings.HasLabels)
            rig.Label("bays_label", settings.Bays == 1 ? "ONE BAY" : $"{settings.Bays} BAYS").Under(heave);

        Debug.WriteLineIf(watch.Elapsed > TimeSpan.FromSeconds(5), $"The ferry took {watch.Elapsed} to define.");
    }

    private static List<(Joint Joint, Control Control)> BuildBays(RigDraft rig, Joint deck, Control heave, int count)
    {
        var bays = new List<(Joint, Control)>();
        for (var i = 0; i < count; i++)
        {
            var bay = deck.Child($"bay_{i + 1}", at: new Vector3(2.5f * (i - (count - 1) / 2f), 0.2f, 0));
            var control = Follow(rig, $"bay_{i + 1}_flex", heave, bay).Lock(Channels.MoveX | Channels.MoveZ).LimitMove(Axis.Y, -0.1f, 0.1f);
            foreach (var end in new[] { "bow", "stern" })
            {
                var post = bay.Child($"bay_{i + 1}_post_{end}", JointRole.Helper, new Vector3(0, 0.5f, end == "bow" ? 2 : -2));
                Follow(rig, $"bay_{i + 1}_post_{end}_lean", control, post).Lock(Channels.Move);
            }

            bays.Add((bay, control));
        }

        return bays;
    }

    private static void BuildRamp(RigDraft rig, Side side, Joint deck, Control heave, bool isLabelled)
    {
        var hinge = deck.Child($"ramp_{side}", at: new Vector3(9 * side.Sign, 0.1f, 0));
        var flap = hinge.Child($"ramp_flap_{side}", at: new Vector3(3 * side.Sign, 0, 0));
        var carried = rig.Control($"ramp_{side}_lift").Under(heave).PlacedAt(hinge).LimitTurn(Axis.Z, -45, 45);
        var grounded = rig.Control($"ramp_{side}_ground").PlacedAt(hinge);
        var landed = carried.Switch("landed");
        rig.Blend(hinge).From(carried, landed.Inverse).From(grounded, landed);
        Follow(rig, $"ramp_{side}_flap", hinge, flap).Lock(Channels.Move).LimitTurn(Axis.Z, -30, 60);
        if (isLabelled)
            rig.Label($"landed_{side}_label", "LANDED").Under(carried).ShownBy(landed);
    }

    private static void BuildChain(RigDraft rig, Skeleton skeleton, Control world, Control ferry, int links)
    {
        var ashore = Side.Both.ToDictionary(side => side, side => rig.Control($"shore_{side}").Under(world));
        for (var i = 0; i < links; i++)
        {
            var along = (i + 0.5f) / links;
            var sag = -4 * along * (1 - along) * 6;
            var link = skeleton.Root($"link_{i:00}", JointRole.Helper, new Vector3(80 - 160 * along, sag, 0));
            var rest = rig.Control($"link_{i:00}_place").Under(ashore[along < 0.5f ? Side.Left : Side.Right]).PlacedAt(link);
            var lifted = rig.Group($"link_{i:00}_lifted_group").Under(ferry).PlacedAt(link);
            var lift = rest.Switch("lifted");
            rig.Blend(link).From(rest, lift.Inverse).From(lifted, lift);
        }
    }

    private static void BuildFerryman(RigDraft rig, Control world, Control stands, Joint bay)
    {
        var pelvis = bay.Child("ferryman_pelvis", at: new Vector3(0, 0.95f, 0));
        var body = Follow(rig, "ferryman_body", stands, pelvis);
        foreach (var side in Side.Both)
        {
            var hip = pelvis.Child($"ferryman_hip_{side}", at: new Vector3(0.1f * side.Sign, -0.05f, 0));
            var knee = hip.Child($"ferryman_knee_{side}", at: new Vector3(0, -0.43f, 0.02f));
            var ankle = knee.Child($"ferryman_ankle_{side}", at: new Vector3(0, -0.42f, -0.02f));
            var chain = rig.Chain(hip, ankle);
            var ik = chain.Copy("ik").Under(rig.Group($"ferryman_leg_{side}_group").Under(body).PlacedAt(hip));
            var foot = rig.Control($"ferryman_foot_{side}").Under(stands).PlacedAt(ankle);
            rig.TwoBone(ik).Reach(foot).Face(rig.Control($"ferryman_pole_{side}").Under(world).PlacedAt(chain.PolePoint(0.5f)));
            rig.Blend(chain).From(ik, 1);
        }
    }

    private static Control Follow(RigDraft rig, string name, Node above, Joint joint)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
