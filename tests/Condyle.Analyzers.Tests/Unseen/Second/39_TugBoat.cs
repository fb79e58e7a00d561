using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R39;

/// <summary>The tug "Ada": hull, funnel, two fenders aside, tow hook and a water cannon. Labels and limits listen to what is built.</summary>
public sealed class TugBoat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var yard = new Shipyard(rig, "tug_ada");
        var log = new List<string>();
        Action<string> note = log.Add;
        note += name => log.Add(name.ToUpperInvariant());

        yard.Fitted += (_, fitted) => note(fitted.Joint.Name);
        yard.Fitted += LimitFenders;
        yard.Fitted += OnHookFitted;

        var hull = yard.Lay("hull", new Vector3(0, 0.5f, 0));
        var funnel = yard.Fit("funnel", hull, new Vector3(0, 2.2f, -0.4f));
        foreach (var side in Side.Both)
        {
            Fitting above = hull;
            foreach (var (place, z) in new[] { ("bow", 3.5f), ("beam", 0f), ("quarter", -3f) })
                above = yard.Fit($"fender_{place}_{side}", above, new Vector3(above == hull ? 2.3f * side.Sign : 0, 0, above == hull ? z : z > 0 ? 1 : -3.2f));
        }

        yard.Fitted -= LimitFenders;
        var hook = yard.Fit("hook", hull, new Vector3(0, 1.2f, -2.6f));
        yard.Fitted -= OnHookFitted;
        yard.Fit("cannon", funnel, new Vector3(0, 1, 0.6f), (control, _) => control.Lock(Channels.Move).LimitTurn(Axis.X, -60, 10));
        yard.Fit("hook_block", hook, new Vector3(0, -0.3f, -0.4f));

        var shown = yard.Hull.Switch("names");
        for (var i = log.Count - 1; i >= 0; i -= 2)
            rig.Label($"name_label_{log[i - 1]}", log[i]).ShownBy(shown);
    }

    private static void LimitFenders(object? sender, Fitting fitted)
    {
        if (!fitted.Joint.Name.StartsWith("fender_", StringComparison.Ordinal))
            return;
        fitted.Control.Lock(Channels.Turn);
        fitted.Control.LimitMove(Axis.Y, -0.4f, 0.4f);
    }

    private static void OnHookFitted(object? sender, Fitting fitted)
    {
        if (sender is not Shipyard yard || fitted.Joint.Name is not "hook")
            return;
        var tow = yard.Rig.Control("tow_line").PlacedAt(fitted.Joint);
        var pulled = fitted.Control.Switch("pulled").AlsoOn(tow);
        yard.Rig.Label("tow_label", "TOWING").Under(fitted.Control).ShownBy(pulled);
        yard.Drives[fitted.Joint.Name] = (target, own) => yard.Rig.Blend(target).From(own, pulled.Inverse).From(tow, pulled);
    }
}

internal sealed record Fitting(Joint Joint, Control Control);

internal sealed class Shipyard(RigDraft rig, string name)
{
    private readonly Skeleton skeleton = rig.Skeleton(name);
    private Fitting? hull;

    public event EventHandler<Fitting>? Fitted;

    public RigDraft Rig { get; } = rig;

    public Control Hull => (hull ?? throw new InvalidOperationException("Lay the hull first.")).Control;

    /// <summary>How a part follows its control, where that isn't a plain drive.</summary>
    public Dictionary<string, Action<Joint, Control>> Drives { get; } = [];

    public Fitting Lay(string part, Vector3 at) => hull = Finish(skeleton.Root(part, at: at), null, null);

    public Fitting Fit(string part, Fitting above, Vector3 at, Func<Control, Joint, Control>? change = null) =>
        Finish(above.Joint.Child(part, at: at), above.Control, change);

    private Fitting Finish(Joint joint, Control? above, Func<Control, Joint, Control>? change)
    {
        var control = Rig.Control($"move_{joint}").PlacedAt(joint);
        if (above is { } node)
            control = control.Under(node);
        control = change?.Invoke(control, joint) ?? control;

        var fitting = new Fitting(joint, control);
        Fitted?.Invoke(this, fitting);
        if (Drives.TryGetValue(joint.Name, out var drive))
            drive(joint, control);
        else
            Rig.Drive(joint).ByChannels(control);
        return fitting;
    }
}
