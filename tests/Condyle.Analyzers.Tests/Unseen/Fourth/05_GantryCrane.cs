// <generated> from gantry_crane.sheet, revision 14. Do not edit by hand. </generated>
#pragma warning disable IDE0001, IDE0090
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R05;

public sealed partial class GantryCrane : global::Condyle.IRigDefinition
{
    public void Define(global::Condyle.RigDraft rig)
    {
        this.InitializeSkeleton(rig);
        this.InitializeControls(rig);
        this.InitializeDrives(rig);
        this.InitializeCable(rig);
    }
}

partial class GantryCrane
{
    private global::Condyle.Joint @j0001;
    private global::Condyle.Joint @j0002;
    private global::Condyle.Joint @j0003;
    private global::Condyle.Joint @j0004;
    private global::Condyle.Joint @j0005;
    private global::Condyle.Joint @j0006;
    private global::Condyle.Control @c0001;
    private global::Condyle.Control @c0002;
    private global::Condyle.Control @c0003;
    private global::Condyle.Control @c0004;
    private global::Condyle.Group @g0001;
    private global::Condyle.Group @g0002;

    private void InitializeSkeleton(global::Condyle.RigDraft rig)
    {
        global::Condyle.Skeleton @s0001 = rig.Skeleton("gantry_crane");
        this.@j0001 = @s0001.Root("gantry", (global::Condyle.JointRole)0, new Vector3(0.0F, 0.0F, 0.0F));
        this.@j0002 = this.@j0001.Child("trolley", (global::Condyle.JointRole)0, new Vector3(0.0F, 18.5F, 4.0F));
        this.@j0003 = this.@j0002.Child("cable_top", (global::Condyle.JointRole)0, new Vector3(0.0F, -0.75F, 0.0F));
        this.@j0004 = this.@j0003.Child("cable_middle", (global::Condyle.JointRole)0, new Vector3(0.0F, -5.0F, 0.125F));
        this.@j0005 = this.@j0004.Child("cable_end", (global::Condyle.JointRole)0, new Vector3(0.0F, -5.0F, -0.125F));
        this.@j0006 = this.@j0005.Child("spreader", (global::Condyle.JointRole)2, new Vector3(0.0F, -0.4F, 0.0F));
    }

    private void InitializeControls(global::Condyle.RigDraft rig)
    {
        this.@g0001 = rig.Group("systems_group");
        this.@g0002 = rig.Group("cable_group");
        this.@g0002.Under(this.@g0001);
        this.@c0001 = rig.Control("gantry_travel");
        this.@c0001.PlacedAt(this.@j0001);
        this.@c0001.Lock((global::Condyle.Channels)(2 | 4 | 56));
        this.@c0001.LimitMove(global::Condyle.Axis.X, -120.0F, 120.0F);
        this.@c0002 = rig.Control("trolley_travel");
        this.@c0002.Under(this.@c0001);
        this.@c0002.PlacedAt(this.@j0002);
        this.@c0002.Lock((global::Condyle.Channels)(1 | 2 | 56));
        this.@c0002.LimitMove(global::Condyle.Axis.Z, -14.0F, 26.0F);
        this.@c0003 = rig.Control("hook_goal");
        this.@c0003.Under(this.@c0002);
        this.@c0003.PlacedAt(this.@j0005);
        this.@c0004 = rig.Control("spreader_turn");
        this.@c0004.Under(this.@c0003);
        this.@c0004.PlacedAt(this.@j0006);
        this.@c0004.LimitTurn(global::Condyle.Axis.Y, -90.0F, 90.0F);
    }

    private void InitializeDrives(global::Condyle.RigDraft rig)
    {
        rig.Drive(this.@j0001).ByChannels(this.@c0001);
        rig.Drive(this.@j0002).ByChannels(this.@c0002);
        rig.Drive(this.@j0006).ByChannels(this.@c0004);
        rig.Drive(this.@g0002).ByMatrix(this.@c0002);
    }

    private void InitializeCable(global::Condyle.RigDraft rig)
    {
        global::Condyle.Chain @h0001 = rig.Chain(this.@j0003, this.@j0005);
        global::Condyle.Copy @k0001 = @h0001.Copy("ik");
        @k0001.Under(this.@g0002);
        global::Condyle.Copy @k0002 = @h0001.Copy("sway");
        @k0002.Under(this.@g0002);
        rig.TwoBone(@k0001).Reach(this.@c0003);
        global::Condyle.Control @c0005 = rig.Control("sway_cable_top");
        @c0005.Under(this.@c0002);
        @c0005.PlacedAt(this.@j0003);
        rig.Drive(@k0002.Of(this.@j0003)).ByChannels(@c0005);
        global::Condyle.Control @c0006 = rig.Control("sway_cable_middle");
        @c0006.Under(@c0005);
        @c0006.PlacedAt(this.@j0004);
        rig.Drive(@k0002.Of(this.@j0004)).ByChannels(@c0006);
        global::Condyle.Switch @w0001 = this.@c0003.Switch("sway", 0.0F);
        @w0001.AlsoOn(this.@c0002);
        global::Condyle.ChainBlend @b0001 = rig.Blend(@h0001);
        @b0001.From(@k0001, @w0001.Inverse);
        @b0001.From(@k0002, @w0001);
        rig.Label("ik_cable_label", "IK").ShownBy(@w0001.Inverse);
        rig.Label("sway_cable_label", "SWAY").ShownBy(@w0001);
    }
}
