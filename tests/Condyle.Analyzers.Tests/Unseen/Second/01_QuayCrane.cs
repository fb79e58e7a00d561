using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R01;

/// <summary>The big level-luffing crane on pier 3. Gameplay code drives slew and hoist through the same controls as the animators.</summary>
public sealed class QuayCrane : IRigDefinition
{
    private const float PortalHeight = 12.5f;
    private const float JibLength = 24f;
    private const float TipLength = 9f;
    private const float RopeLength = 14f;
    private const int WheelsPerLeg = 3;

    private RigDraft _rig = null!;
    private Joint _portal;
    private Joint _slew;
    private Joint _jib;
    private Joint _jibTip;
    private Joint _hook;
    private Control _world;
    private Control _slewControl;
    private readonly List<Joint> _wheels = new List<Joint>();

    public void Define(RigDraft rig)
    {
        _rig = rig;

        BuildSkeleton();
        BuildBase();
        BuildWheels();
        BuildJib();
    }

    private void BuildSkeleton()
    {
        var skeleton = _rig.Skeleton("quay_crane");
        _portal = skeleton.Root("portal");

        foreach (var side in Side.Both)
        {
            for (int i = 0; i < WheelsPerLeg; i++)
            {
                float z = -2f + i * 2f;
                _wheels.Add(_portal.Child($"wheel_{i}_{side}", at: new Vector3(5f * side.Sign, 0.4f, z)));
            }
        }

        _slew = _portal.Child("slew", at: new Vector3(0f, PortalHeight, 0f));
        _jib = _slew.Child("jib", at: new Vector3(0f, 2f, 1.5f));
        var knee = _jib.Child("jib_knee", at: new Vector3(0f, JibLength * 0.8f, JibLength * 0.6f));
        _jibTip = knee.Child("jib_tip", at: new Vector3(0f, -1f, TipLength));
        _hook = _jibTip.Child("hook", JointRole.Helper, at: new Vector3(0f, -RopeLength, 0f));
    }

    private void BuildBase()
    {
        _world = _rig.Control("world");

        var drivePortal = _rig.Control("drive_portal").Under(_world).PlacedAt(_portal);
        drivePortal.Lock(Channels.Turn | Channels.MoveX | Channels.MoveY);
        drivePortal.LimitMove(Axis.Z, -80f, 80f);
        _rig.Drive(_portal).ByChannels(drivePortal);

        _slewControl = _rig.Control("slew_crane").Under(drivePortal).PlacedAt(_slew);
        _slewControl.Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
        _rig.Drive(_slew).ByChannels(_slewControl);
    }

    private void BuildWheels()
    {
        var group = _rig.Group("wheels_group").PlacedAt(_portal);
        _rig.Drive(group).ByMatrix(_portal);

        foreach (var wheel in _wheels)
        {
            var roll = _rig.Control("roll_" + wheel.Name).Under(group).PlacedAt(wheel).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            _rig.Drive(wheel).ByChannels(roll);
        }
    }

    private void BuildJib()
    {
        var jib = _rig.Chain(_jib, _jibTip);

        var ikGroup = _rig.Group("jib_group").PlacedAt(_slewControl);
        _rig.Drive(ikGroup).ByMatrix(_slewControl);

        // IK: the operator asks where the tip should be, the knee follows.
        var ik = jib.Copy("ik").Under(ikGroup);
        var tip = _rig.Control("jib_target").Under(_slewControl).PlacedAt(jib.Tip).Lock(Channels.Turn);
        var pole = _rig.Control("jib_pole").Under(_slewControl).PlacedAt(ik.PolePoint(6f)).Lock(Channels.Turn);
        _rig.TwoBone(ik).Reach(tip).Face(pole);

        // FK: three luffing angles.
        var fk = jib.Copy("fk").Under(ikGroup);
        Control parent = _slewControl;
        for (int i = 0; i < jib.Count; i++)
        {
            var luff = _rig.Control($"luff_{i}").Under(parent).PlacedAt(jib[i]);
            luff.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            if (i < 2)
            {
                luff.LimitTurn(Axis.X, -50f, 20f);
            }

            _rig.Drive(fk.Of(jib[i])).ByChannels(luff);
            parent = luff;
        }

        var manual = tip.Switch("manual").AlsoOn(_slewControl);
        _rig.Blend(jib).From(ik, manual.Inverse).From(fk, manual);
        _rig.Label("manual_label", "MANUAL").Under(tip).ShownBy(manual);

        // The hook hangs in the world's orientation, so it gets its own hoist control under the slew.
        var hoist = _rig.Control("hoist").Under(_slewControl).PlacedAt(_hook).LimitMove(Axis.Y, -10f, 12f);
        _rig.Drive(_hook).ByChannels(hoist);
    }
}
