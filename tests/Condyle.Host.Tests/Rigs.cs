using System.Numerics;
using Condyle.Runtime;

namespace Condyle.Host.Tests;

[SkeletonFile("hoist.gltf")]
public sealed class Hoist : IRigDefinition
{
    /// <summary>What its modeller delivered.</summary>
    public const string Delivered = """
        {
          "asset": { "version": "2.0" },
          "scene": 0,
          "scenes": [ { "nodes": [0] } ],
          "nodes": [
            { "name": "jib", "translation": [0, 2, 0], "children": [1] },
            { "name": "hook", "translation": [0, 0, 1.5] }
          ],
          "skins": [ { "joints": [0, 1] } ]
        }
        """;

    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("hoist").Root("jib", at: new Vector3(0, 2, 0));
        var hook = jib.Child("hook", at: new Vector3(0, 0, 1.5f));
        var slew = rig.Control("slew").PlacedAt(jib).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -90, 90);
        var drop = rig.Control("drop").Under(slew).PlacedAt(hook).Lock(Channels.Turn).LimitMove(Axis.Y, -1, 0);
        rig.Drive(jib).ByChannels(slew);
        rig.Drive(hook).ByChannels(drop);
    }
}

/// <summary>Its hook is turned by a dial.</summary>
[SkeletonFile("hoist.gltf")]
public sealed class Winch : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("hoist").Root("jib", at: new Vector3(0, 2, 0));
        var hook = jib.Child("hook", at: new Vector3(0, 0, 1.5f));
        var slew = rig.Control("slew").PlacedAt(jib);
        rig.Drive(jib).ByChannels(slew);
        rig.Response(slew.Dial("crank", from: -720, to: 720, unit: DialUnit.Degrees)).Key(0, 0).Key(360, 360).Continued().OntoTurn(hook, Axis.X);
    }
}

/// <summary>Its hook goes with the jib or with a control of its own.</summary>
[SkeletonFile("hoist.gltf")]
public sealed class Lever : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("hoist").Root("jib", at: new Vector3(0, 2, 0));
        var hook = jib.Child("hook", at: new Vector3(0, 0, 1.5f));
        var slew = rig.Control("slew").PlacedAt(jib);
        var (low, high) = (rig.Control("low").Under(slew).PlacedAt(hook), rig.Control("high").Under(slew).PlacedAt(hook));
        rig.Drive(jib).ByChannels(slew);
        var fk = slew.Switch("fk");
        rig.Blend(hook).From(low, fk.Inverse).From(high, fk);
    }
}

/// <summary>Hips, and an arm with IK and FK.</summary>
public sealed class Rigger : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("rigger").Root("pelvis", at: new Vector3(0, 1, 0));
        var shoulder = pelvis.Child("shoulder_left", at: new Vector3(0.2f, 0.5f, 0));
        var wrist = shoulder.Child("elbow_left", at: new Vector3(0.3f, 0, -0.05f)).Child("wrist_left", at: new Vector3(0.25f, 0, 0.05f));
        var body = rig.Control("body").PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(body);
        rig.Limb(rig.Chain(shoulder, wrist), "arm", Side.Left, under: body, rig.Group("systems_group"), rig.Control("world"));
    }
}

public sealed class HoistClips : IClipsFor<Hoist>
{
    public IEnumerable<Clip> Clips() =>
    [
        new Clip("unload", seconds: 2).TurnAbout("slew", Axis.Y, (0, 0), (1, 60), (2, 60)).MoveAlong("drop", Axis.Y, (1, 0), (2, -0.8f)),
    ];
}

/// <summary>Its hook follows by matrix, which is an error.</summary>
[SkeletonFile("hoist.gltf")]
public sealed class StiffHoist : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("hoist").Root("jib", at: new Vector3(0, 2, 0));
        var hook = jib.Child("hook", at: new Vector3(0, 0, 1.5f));
        rig.Drive(hook).ByMatrix(rig.Control("drop").PlacedAt(hook));
    }
}

/// <summary>A group without the suffix: a finding that is no error.</summary>
public sealed class Untidy : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        rig.Group("odds");
        rig.Drive(rig.Skeleton("peg").Root("peg")).ByChannels(rig.Control("move_peg"));
    }
}

/// <summary>Two controls that hang under each other.</summary>
public sealed class Knot : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var (a, b) = (rig.Control("rope"), rig.Control("bight"));
        a.Under(b);
        b.Under(a);
        rig.Drive(rig.Skeleton("knot").Root("knot")).ByChannels(a);
    }
}

/// <summary>Its code fails.</summary>
public sealed class Leak : IRigDefinition
{
    public void Define(RigDraft rig) => throw new FormatException("the tide table has no Tuesday");
}

[SkeletonFile("hoist.gltf")]
public sealed class Mistyped : IRigDefinition
{
    public void Define(RigDraft rig) => new Hoist().Define(rig);
}

public sealed class MistypedClips : IClipsFor<Mistyped>
{
    public IEnumerable<Clip> Clips() => [new Clip("unload", seconds: 1).TurnAbout("slow", Axis.Y, (0, 0)), new Clip("reel", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 30))];
}

/// <summary>A static field of it fails, which the runtime wraps twice.</summary>
public sealed class Sprung : IRigDefinition
{
    private static readonly int Planks = int.Parse("three", System.Globalization.CultureInfo.InvariantCulture);

    public void Define(RigDraft rig) => rig.Control($"plank_{Planks}");
}

/// <summary>Its clips fail halfway.</summary>
[SkeletonFile("hoist.gltf")]
public sealed class Becalmed : IRigDefinition
{
    public void Define(RigDraft rig) => new Hoist().Define(rig);
}

public sealed class BecalmedClips : IClipsFor<Becalmed>
{
    public IEnumerable<Clip> Clips()
    {
        yield return new Clip("unload", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0));
        throw new NotSupportedException("there is no wind");
    }
}

/// <summary>They come after those that fail.</summary>
public sealed class BecalmedRowing : IClipsFor<Becalmed>
{
    public IEnumerable<Clip> Clips() => [new Clip("row", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 10))];
}

/// <summary>One clip too heavy, one that doesn't fit its rig, one that is there twice, and good ones.</summary>
public sealed class Overladen : IClipsFor<Hoist>
{
    public IEnumerable<Clip> Clips()
    {
        var heavy = new Clip("heavy", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 10));
        var (over, under) = (new Clip("over", seconds: 1), new Clip("under", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0)));
        for (var layer = 0; layer < 40; layer++)
            over.Layer(under);
        for (var layer = 0; layer < 24; layer++)
            heavy.Layer(over);
        // It was laid over the other one before it got too many layers of its own.
        for (var layer = 0; layer < 40; layer++)
            over.Layer(under);
        yield return heavy;
        yield return new Clip("astray", seconds: 1).TurnAbout("slow", Axis.Y, (0, 0));
        yield return new Clip("turn", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 30));
        yield return new Clip("turn", seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 60));
    }
}

/// <summary>Nothing of it moves.</summary>
[SkeletonFile("hoist.gltf")]
public sealed class Bollard : IRigDefinition
{
    public void Define(RigDraft rig) => rig.Skeleton("bollard").Root("post");
}

/// <summary>A rig that is a struct: it needs no constructor.</summary>
public readonly record struct Cleat : IRigDefinition
{
    public void Define(RigDraft rig) => rig.Group("odds");
}

/// <summary>Waits, and fails where nobody could catch it.</summary>
public sealed class Tide : IRigDefinition
{
    public async void Define(RigDraft rig)
    {
        rig.Group("odds_group");
        await Task.Yield();
        throw new NotSupportedException("The tide waits for nobody.");
    }
}

/// <summary>Two controls of one name, which is only a warning, and which nobody could tell apart.</summary>
public sealed class Namesakes : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        rig.Control("hook").Accept("CDY1002", because: "Nobody looks for it by its name.");
        rig.Control("hook").Accept("CDY1002", because: "Nobody looks for it by its name.");
    }
}
