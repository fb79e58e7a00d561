using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R28;

public sealed record ReachOptions
{
    public float ShortestMetres { get; init; }

    public required float LongestMetres { get; init; }

    public IEnumerable<string> Problems(string where)
    {
        if (!float.IsFinite(ShortestMetres) || !float.IsFinite(LongestMetres))
            yield return $"{where}: both ends of a reach have to be finite numbers.";
        else if (ShortestMetres >= LongestMetres)
            yield return $"{where}: {ShortestMetres} m is not less than {LongestMetres} m.";
    }
}

public sealed record PortalOptions
{
    public float GaugeMetres { get; init; } = 30f;

    public float WheelbaseMetres { get; init; } = 18f;

    public float HeightMetres { get; init; } = 42f;

    public int BogiesPerCorner { get; init; } = 2;

    public IEnumerable<string> Problems()
    {
        if (GaugeMetres <= 0f)
            yield return "The rails have no gauge.";
        if (WheelbaseMetres <= 0f)
            yield return "The portal has no wheelbase.";
        if (HeightMetres < 10f)
            yield return "A portal lower than ten metres lets no straddle carrier through.";
        if (BogiesPerCorner is < 1 or > 4)
            yield return $"Between one and four bogies stand in a corner, not {BogiesPerCorner}.";
    }
}

public sealed record SpreaderOptions
{
    public float HalfLengthMetres { get; init; } = 3f;

    public float HalfWidthMetres { get; init; } = 1.2f;

    public bool Twistlocks { get; init; } = true;
}

public sealed record CraneOptions
{
    public string Name
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? throw new ArgumentException("The crane has no name.", nameof(value)) : value.Trim();
    } = "quay_crane";

    public PortalOptions Portal { get; init; } = new();

    public SpreaderOptions Spreader { get; init; } = new();

    public ReachOptions Trolley { get; init; } = new() { ShortestMetres = -15f, LongestMetres = 45f };

    public ReachOptions Hoist { get; init; } = new() { ShortestMetres = -38f, LongestMetres = 0f };

    public float BoomRaisedDegrees { get; init; } = 80f;

    public CraneOptions Validated()
    {
        List<string> problems = [.. Portal.Problems(), .. Trolley.Problems("Trolley"), .. Hoist.Problems("Hoist")];
        if (BoomRaisedDegrees is <= 0f or > 90f)
            problems.Add($"A boom raises to at most a right angle, not {BoomRaisedDegrees} degrees.");
        return problems.Count == 0
            ? this
            : throw new InvalidOperationException($"The options of '{Name}' don't hold together:\n  {string.Join("\n  ", problems)}");
    }
}

/// <summary>The ship-to-shore crane of berth two, with the dimensions that the level team measured.</summary>
public sealed class QuayCrane : IRigDefinition
{
    private static readonly CraneOptions BerthTwo = new CraneOptions
    {
        Portal = new() { BogiesPerCorner = 3, HeightMetres = 44f },
        Trolley = new() { ShortestMetres = -12f, LongestMetres = 50f },
    }.Validated();

    private readonly CraneOptions options;

    public QuayCrane()
        : this(BerthTwo)
    {
    }

    public QuayCrane(CraneOptions options) => this.options = options.Validated();

    public void Define(RigDraft rig)
    {
        var portal = options.Portal;
        var skeleton = rig.Skeleton(options.Name);
        var root = skeleton.Root("crane_root", JointRole.Helper);
        var frame = root.Child("portal", at: new(0f, portal.HeightMetres, 0f));
        var boom = frame.Child("boom", at: new(portal.GaugeMetres / 2f, 2f, 0f));
        var boomEnd = boom.Child("boom_end", JointRole.Helper, new(options.Trolley.LongestMetres, 0f, 0f));
        var trolley = frame.Child("trolley", at: new(0f, 1f, 0f));
        var headblock = trolley.Child("headblock", at: new(0f, -4f, 0f));
        var spreader = headblock.Child("spreader", at: new(0f, -1.1f, 0f));
        var cabin = trolley.Child("cabin", at: new(-2f, -2.4f, 2.5f));

        var travel = rig.Control("travel").Lock(Channels.MoveX | Channels.MoveY | Channels.Turn);
        rig.Drive(root).ByChannels(travel);

        var frameControl = Follow(rig, frame, travel, "portal_sway").LimitTurn(Axis.Z, -1.5f, 1.5f);
        var boomControl = Follow(rig, boom, frameControl, "boom_luff")
            .Lock(Channels.Move | Channels.TurnX | Channels.TurnY)
            .LimitTurn(Axis.Z, 0f, options.BoomRaisedDegrees);
        Follow(rig, boomEnd, boomControl, "boom_tip_flex").Lock(Channels.Move);

        var trolleyControl = Follow(rig, trolley, frameControl, "trolley_run")
            .Lock(Channels.MoveY | Channels.MoveZ | Channels.Turn)
            .LimitMove(Axis.X, options.Trolley.ShortestMetres, options.Trolley.LongestMetres);
        var hoistControl = Follow(rig, headblock, trolleyControl, "hoist")
            .Lock(Channels.MoveX | Channels.MoveZ)
            .LimitMove(Axis.Y, options.Hoist.ShortestMetres, options.Hoist.LongestMetres);
        var spreaderControl = Follow(rig, spreader, hoistControl, "spreader_skew").LimitTurn(Axis.Y, -5f, 5f);
        Follow(rig, cabin, trolleyControl, "cabin_sway");

        Twistlocks(rig, spreader, spreaderControl);
        Bogies(rig, root, travel);
    }

    private static Control Follow(RigDraft rig, Joint joint, Control parent, string name)
    {
        var control = rig.Control(name).Under(parent).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private void Twistlocks(RigDraft rig, Joint spreader, Control parent)
    {
        if (!options.Spreader.Twistlocks)
            return;
        foreach (var (end, z) in new[] { ("fore", 1f), ("aft", -1f) })
        {
            foreach (var side in Side.Both)
            {
                var at = new Vector3(side.Sign * options.Spreader.HalfWidthMetres, -0.3f, z * options.Spreader.HalfLengthMetres);
                var joint = spreader.Child($"twistlock_{end}_{side}", at: at);
                Follow(rig, joint, parent, $"lock_{end}_{side}").Lock(Channels.Move | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, 0f, 90f);
            }
        }
    }

    private void Bogies(RigDraft rig, Joint root, Control travel)
    {
        var portal = options.Portal;
        var bogies = rig.Group("bogies_group").Under(travel);
        foreach (var end in (string[])["fore", "aft"])
        {
            foreach (var side in Side.Both)
            {
                for (var number = 1; number <= portal.BogiesPerCorner; number++)
                {
                    var z = (end == "fore" ? 0.5f : -0.5f) * portal.WheelbaseMetres;
                    var wheel = root.Child(
                        $"wheel_{end}_{number}_{side}",
                        at: new(side.Sign * portal.GaugeMetres / 2f, 0.4f, z + ((number - 1) * 1.2f)));
                    var control = rig.Control($"roll_{end}_{number}_{side}").Under(bogies).PlacedAt(wheel).Lock(Channels.All & ~Channels.TurnX);
                    rig.Drive(wheel).ByChannels(control);
                }
            }
        }
    }
}
