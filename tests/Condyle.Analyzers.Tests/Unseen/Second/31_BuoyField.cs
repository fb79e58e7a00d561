// ---------------------------------------------------------------------------
//  Written by the chart exporter from chart "approach_east", revision 12.
//  Don't edit: changes are lost when the chart is exported again.
// ---------------------------------------------------------------------------
using System.Numerics;
using Condyle;

namespace Unseen.Second.R31;

/// <summary>The buoys of the eastern approach.</summary>
public sealed partial class BuoyField : global::Condyle.IRigDefinition
{
    private const int None = -1;
    private const uint Port = 0x01u;
    private const uint Starboard = 0x02u;
    private const uint Bell = 0x10u;
    private const uint Light = 0x20u;
    private const uint Reflector = 0x40u;

    private static readonly int[] __parents =
    {
        None, 0, 0, 0, 0, 0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 11,
    };

    private static readonly string[] __names =
    {
        "field", "buoy_00", "buoy_01", "buoy_02", "buoy_03", "buoy_04", "buoy_05", "tower_00",
        "tower_01", "tower_02", "tower_03", "tower_04", "tower_05", "bell_00", "bell_01", "bell_04",
    };

    private static readonly float[] __positions =
    {
        0f, 0f, 0f,
        12.5f, 0f, 40f,
        -12.5f, 0f, 40f,
        11.75f, 0f, 85.25f,
        -11.75f, 0f, 85.25f,
        9.5f, 0f, 131f,
        -9.5f, 0f, 131f,
        0f, 2.4f, 0f,
        0f, 2.4f, 0f,
        0f, 2.4f, 0f,
        0f, 2.4f, 0f,
        0f, 3.1f, 0f,
        0f, 3.1f, 0f,
        0f, 0.8f, 0.2f,
        0f, 0.8f, -0.2f,
        0f, 0.8f, 0f,
    };

    private static readonly uint[] __flags =
    {
        0x00u, 0x01u, 0x02u, 0x01u, 0x02u, 0x21u, 0x22u, 0x11u,
        0x12u, 0x41u, 0x42u, 0x31u, 0x22u, 0x10u, 0x10u, 0x10u,
    };

    /// <inheritdoc/>
    public void Define(global::Condyle.RigDraft rig)
    {
        __Joints(rig, out global::Condyle.Joint[] __joints);
        __Controls(rig, __joints, out global::Condyle.Control[] __controls);
        __Labels(rig, __controls);
    }
}

public sealed partial class BuoyField
{
    private static void __Joints(global::Condyle.RigDraft rig, out global::Condyle.Joint[] __joints)
    {
        global::Condyle.Skeleton __skeleton = rig.Skeleton("approach_east");
        __joints = new global::Condyle.Joint[__names.Length];
        for (int __i = 0; __i < __names.Length; ++__i)
        {
            int __o = __i * 3;
            Vector3 __at = new Vector3(__positions[__o], __positions[__o + 1], __positions[__o + 2]);
            global::Condyle.JointRole __role = __flags[__i] == 0x00u ? global::Condyle.JointRole.Helper : global::Condyle.JointRole.Deform;
            __joints[__i] = __parents[__i] == None
                ? __skeleton.Root(__names[__i], __role, __at)
                : __joints[__parents[__i]].Child(__names[__i], __role, __at);
        }
    }

    private static void __Controls(global::Condyle.RigDraft rig, global::Condyle.Joint[] __joints, out global::Condyle.Control[] __controls)
    {
        __controls = new global::Condyle.Control[__joints.Length];
        for (int __i = 0; __i < __joints.Length; ++__i)
        {
            global::Condyle.Control __c = rig.Control(string.Concat("drift_", __names[__i])).PlacedAt(__joints[__i]);
            if (__parents[__i] != None)
                __c = __c.Under(__controls[__parents[__i]]);
            if ((__flags[__i] & Bell) != 0u)
                __c = __c.Lock(Channels.Move).LimitTurn(Axis.X, -25f, 25f).LimitTurn(Axis.Z, -25f, 25f);
            if ((__flags[__i] & (Light | Reflector)) != 0u)
                __c = __c.Lock(Channels.TurnY);
            if ((__flags[__i] & (Port | Starboard)) is Port or Starboard)
                __c = __c.LimitMove(Axis.Y, -1.5f, 1.5f);
            rig.Drive(__joints[__i]).ByChannels(__c);
            __controls[__i] = __c;
        }
    }

    private static void __Labels(global::Condyle.RigDraft rig, global::Condyle.Control[] __controls)
    {
        global::Condyle.Switch __night = __controls[0].Switch("night", 0.25f);
        int __n = 0;
        for (int __i = 0; __i < __controls.Length; ++__i)
        {
            if ((__flags[__i] & Light) == 0u)
                continue;
            bool __left = (__flags[__i] & Port) == Port;
            rig.Label("light_" + __n.ToString("D2", global::System.Globalization.CultureInfo.InvariantCulture), __left ? "red" : "green")
                .Under(__controls[__i])
                .ShownBy(__night);
            ++__n;
        }
    }
}
