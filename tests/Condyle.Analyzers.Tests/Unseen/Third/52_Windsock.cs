using System;
using System.Globalization;
using System.IO;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R52;

/// <summary>
/// The windsock and the weather mast on the harbour office. How many rings the sock has is up to the machine that builds it:
/// the artists' machines set HARBOUR_SOCK_RINGS, the build machine leaves it alone.
/// </summary>
public sealed class Windsock : IRigDefinition
{
    private const string RingsVariable = "HARBOUR_SOCK_RINGS";
    private const string OverridesFile = "harbour_overrides.txt";
    private const int DefaultRings = 12;

    public void Define(RigDraft rig)
    {
        var rings = RingsFromEnvironment() ?? DefaultRings;
        var overrides = ReadOverrides();

        var mast = rig.Skeleton("windsock").Root("mast");
        var top = mast.Child("mast_top", at: new Vector3(0f, overrides.MastHeight, 0f));
        var swivel = top.Child("swivel", at: new Vector3(0f, 0.1f, 0f));

        var world = rig.Control("world");
        var bendMast = Turn(rig, mast, world);
        var bendTop = Turn(rig, top, bendMast).LimitTurn(Axis.X, -5f, 5f).LimitTurn(Axis.Z, -5f, 5f);
        var wind = Turn(rig, swivel, bendTop).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);

        Sock(rig, swivel, wind, rings);
        Vane(rig, top, bendTop);
        Cups(rig, top, bendTop, overrides.Cups);
        if (overrides.NightLamp)
            Lamp(rig, top, bendTop);
    }

    private static void Sock(RigDraft rig, Joint swivel, Control wind, int rings)
    {
        var calm = wind.Switch("calm");
        var joint = swivel;
        var streaming = wind;
        for (var ring = 0; ring < rings; ring++)
        {
            joint = joint.Child($"ring_{ring}", at: new Vector3(0f, 0f, ring == 0 ? 0.25f : 0.3f));
            streaming = rig.Control($"stream_{ring}").Under(streaming).PlacedAt(joint);
            var hanging = rig.Control($"hang_{ring}").Under(wind).PlacedAt(joint);
            rig.Blend(joint).From(streaming, calm.Inverse).From(hanging, calm);
        }

        rig.Label("calm_label", "CALM").Under(wind).ShownBy(calm);
    }

    private static void Vane(RigDraft rig, Joint top, Control above)
    {
        var vane = top.Child("vane", at: new Vector3(0.6f, 0.4f, 0f));
        var pointing = Turn(rig, vane, above);
        foreach (var end in new[] { "arrow", "feather" })
        {
            var joint = vane.Child($"vane_{end}", at: new Vector3(0f, 0f, end == "arrow" ? 0.4f : -0.4f));
            Turn(rig, joint, pointing).Lock(Channels.Move);
        }
    }

    private static void Cups(RigDraft rig, Joint top, Control above, int cups)
    {
        var hub = top.Child("hub", at: new Vector3(-0.6f, 0.4f, 0f));
        var spin = Turn(rig, hub, above);
        for (var cup = 0; cup < cups; cup++)
        {
            var turned = Quaternion.CreateFromAxisAngle(Vector3.UnitY, cup * MathF.Tau / cups);
            var joint = hub.Child($"cup_{cup}", at: Vector3.Transform(0.2f * Vector3.UnitX, turned), turned: turned);
            rig.Drive(joint).ByChannels(rig.Group($"cup_{cup}_group").Under(spin).PlacedAt(joint));
        }
    }

    private static void Lamp(RigDraft rig, Joint top, Control above)
    {
        var lamp = top.Child("lamp", at: new Vector3(0f, 0.6f, 0f));
        Turn(rig, lamp, above);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static int? RingsFromEnvironment()
    {
        var text = Environment.GetEnvironmentVariable(RingsVariable);
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var rings) && rings is >= 3 and <= 40 ? rings : null;
    }

    private static (float MastHeight, int Cups, bool NightLamp) ReadOverrides()
    {
        var settings = (MastHeight: 6f, Cups: 3, NightLamp: DateTime.Now.Year < 2000);
        string[] lines;
        try
        {
            lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, OverridesFile));
        }
        catch (IOException)
        {
            return settings;
        }
        catch (UnauthorizedAccessException)
        {
            return settings;
        }

        foreach (var line in lines)
        {
            switch (line.Split('=', StringSplitOptions.TrimEntries))
            {
                case ["mast_height", var metres] when float.TryParse(metres, CultureInfo.InvariantCulture, out var height) && height > 0f:
                    settings.MastHeight = height;
                    break;
                case ["cups", var count] when int.TryParse(count, CultureInfo.InvariantCulture, out var cups) && cups is > 1 and < 9:
                    settings.Cups = cups;
                    break;
                case ["night_lamp", "yes"]:
                    settings.NightLamp = true;
                    break;
            }
        }

        return settings;
    }
}
