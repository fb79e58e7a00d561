using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Numerics;
using System.Threading;
using Condyle;

namespace Unseen.Third.R43;

/// <summary>Nothing is made before somebody asks for it, and nothing is made twice.</summary>
internal sealed class Memo<TKey, TValue>(Func<TKey, TValue> make)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, Lazy<TValue>> made = new();

    public TValue this[TKey key] => made.GetOrAdd(key, k => new Lazy<TValue>(() => make(k), LazyThreadSafetyMode.None)).Value;
}

internal sealed class LighthouseParts
{
    private readonly RigDraft rig;
    private readonly Lazy<Skeleton> skeleton;
    private readonly Lazy<Joint> rock;
    private readonly Lazy<Joint> gallery;
    private readonly Lazy<Joint> lens;
    private readonly Lazy<Control> world;
    private readonly Lazy<Group> systems;
    private readonly Memo<int, Joint> storeys;
    private readonly Memo<(int Ring, int Panel), Joint> prisms;
    private readonly Memo<int, Joint> shutters;
    private readonly Memo<Joint, Control> controls;
    private readonly Dictionary<Joint, Func<Node>> parents = [];

    public LighthouseParts(RigDraft rig)
    {
        this.rig = rig;
        skeleton = new(() => rig.Skeleton("lighthouse"));
        rock = new(() => Register(skeleton.Value.Root("rock", JointRole.Helper), () => World));
        gallery = new(() => Register(storeys![Storeys].Child("gallery", at: new(0f, 2f, 0f)), () => controls![storeys![Storeys]]));
        lens = new(() => Register(gallery.Value.Child("lens", at: new(0f, 1.4f, 0f)), () => controls![gallery.Value]));
        world = new(() => rig.Control("world"));
        systems = new(() => rig.Group("systems_group").Under(World));
        storeys = new(Storey);
        prisms = new(Prism);
        shutters = new(Shutter);
        controls = new(MakeControl);
    }

    public const int Storeys = 6;
    public const int Rings = 3;
    public const int Panels = 8;

    public Control World => world.Value;

    public Group Systems => systems.Value;

    public Joint Lens => lens.Value;

    public Joint Gallery => gallery.Value;

    public Joint PrismAt(int ring, int panel) => prisms[(ring, panel)];

    public Joint ShutterAt(int number) => shutters[number];

    public Control ControlOf(Joint joint) => controls[joint];

    // Recursive through the cache: asking for the sixth storey builds the five below it.
    private Joint Storey(int number) => number == 0
        ? rock.Value
        : Register(
            storeys[number - 1].Child($"storey_{number}", at: new(0f, number == 1 ? 3f : 4f, 0f)),
            () => controls[storeys[number - 1]]);

    private Joint Prism((int Ring, int Panel) where)
    {
        var angle = where.Panel * MathF.Tau / Panels;
        var radius = 0.9f - (0.2f * Math.Abs(where.Ring - 1));
        var joint = Lens.Child(
            $"prism_{where.Ring}_{where.Panel}",
            at: new(radius * MathF.Sin(angle), 0.45f * (where.Ring - 1), radius * MathF.Cos(angle)),
            turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, angle));
        return Register(joint, () => controls[Lens]);
    }

    private Joint Shutter(int number) => Register(
        Gallery.Child($"shutter_{number}", at: Vector3.Transform(new(0f, 0.8f, 1.8f), Quaternion.CreateFromAxisAngle(Vector3.UnitY, number * MathF.Tau / 4f))),
        () => Systems);

    private Joint Register(Joint joint, Func<Node> parent)
    {
        parents[joint] = parent;
        return joint;
    }

    private Control MakeControl(Joint joint)
    {
        var control = rig.Control($"turn_{joint.Name}").Under(parents[joint]()).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}

public sealed class Lighthouse : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var parts = new LighthouseParts(rig);

        // Asking for the lens asks for everything below it.
        var lens = parts.ControlOf(parts.Lens).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
        for (var ring = 0; ring < LighthouseParts.Rings; ring++)
        {
            for (var panel = 0; panel < LighthouseParts.Panels; panel++)
                parts.ControlOf(parts.PrismAt(ring, panel)).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -15f, 15f);
        }

        var gallery = parts.ControlOf(parts.Gallery);
        rig.Drive(parts.Systems).ByMatrix(gallery);
        for (var number = 0; number < 4; number++)
            parts.ControlOf(parts.ShutterAt(number)).LimitTurn(Axis.Y, 0f, 100f);

        // The daymark turns with the lens or stays with the gallery.
        var daymark = parts.Gallery.Child("daymark", at: new(0f, 3f, 0f));
        var turning = rig.Group("daymark_turning_group").Under(lens).PlacedAt(daymark);
        var standing = rig.Group("daymark_standing_group").Under(gallery).PlacedAt(daymark);
        var turns = lens.Switch("turning", 1f).AlsoOn(gallery);
        var stands = new Lazy<Weight>(() => turns.Inverse);
        rig.Blend(daymark).From(turning, turns).From(standing, stands.Value);
        rig.Label("daymark_standing_label", "FIXED").Under(gallery).ShownBy(stands.Value);
    }
}
