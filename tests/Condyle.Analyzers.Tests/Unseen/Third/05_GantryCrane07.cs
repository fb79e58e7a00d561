// Written by quaytab 2.11 from gantry_07.tab on the release machine. Change the table, not this file.
using System.Numerics;
using Condyle;

namespace Unseen.Third.R05;

#region gantry_07

public sealed partial class GantryCrane07 : IRigDefinition
{
    private Joint j000, j001, j002, j003, j004, j005, j006, j007, j008, j009;
    private Joint j010, j011, j012, j013, j014, j015, j016, j017, j018, j019;
    private Joint j020, j021, j022, j023, j024, j025, j026, j027, j028, j029;
    private Joint j030, j031, j032, j033, j034, j035, j036, j037, j038, j039;
    private Joint j040, j041, j042;
    private Control c000, c001, c002, c003, c004, c005, c006, c007, c008, c009;
    private Control c010, c011, c012, c013, c014, c015, c016, c017, c018, c019;
    private Control c020, c021, c022, c023, c024, c025, c026, c027, c028, c029;
    private Control c030, c031;

    public void Define(RigDraft rig)
    {
        Section_Joints(rig);
        Section_Controls(rig);
        Section_Drives(rig);
        Section_Solvers(rig);
    }

    private void Section_Joints(RigDraft rig)
    {
        var s00 = rig.Skeleton("gantry_07");
        j000 = s00.Root("gantry", JointRole.Helper, new Vector3(0f, 0f, 0f));
        j001 = j000.Child("leg_sea_left", JointRole.Deform, new Vector3(9f, 0f, 12.5f));
        j002 = j001.Child("bogie_sea_left", JointRole.Deform, new Vector3(0f, 0.9f, 0f));
        j003 = j002.Child("wheel_0_sea_left", JointRole.Deform, new Vector3(0f, -0.45f, -1.4f));
        j004 = j002.Child("wheel_1_sea_left", JointRole.Deform, new Vector3(0f, -0.45f, 0f));
        j005 = j002.Child("wheel_2_sea_left", JointRole.Deform, new Vector3(0f, -0.45f, 1.4f));
        j006 = j000.Child("leg_land_left", JointRole.Deform, new Vector3(9f, 0f, -12.5f));
        j007 = j006.Child("bogie_land_left", JointRole.Deform, new Vector3(0f, 0.9f, 0f));
        j008 = j007.Child("wheel_0_land_left", JointRole.Deform, new Vector3(0f, -0.45f, -1.4f));
        j009 = j007.Child("wheel_1_land_left", JointRole.Deform, new Vector3(0f, -0.45f, 0f));
        j010 = j007.Child("wheel_2_land_left", JointRole.Deform, new Vector3(0f, -0.45f, 1.4f));
        j011 = j000.Child("leg_sea_right", JointRole.Deform, new Vector3(-9f, 0f, 12.5f));
        j012 = j011.Child("bogie_sea_right", JointRole.Deform, new Vector3(0f, 0.9f, 0f));
        j013 = j012.Child("wheel_0_sea_right", JointRole.Deform, new Vector3(0f, -0.45f, -1.4f));
        j014 = j012.Child("wheel_1_sea_right", JointRole.Deform, new Vector3(0f, -0.45f, 0f));
        j015 = j012.Child("wheel_2_sea_right", JointRole.Deform, new Vector3(0f, -0.45f, 1.4f));
        j016 = j000.Child("leg_land_right", JointRole.Deform, new Vector3(-9f, 0f, -12.5f));
        j017 = j016.Child("bogie_land_right", JointRole.Deform, new Vector3(0f, 0.9f, 0f));
        j018 = j017.Child("wheel_0_land_right", JointRole.Deform, new Vector3(0f, -0.45f, -1.4f));
        j019 = j017.Child("wheel_1_land_right", JointRole.Deform, new Vector3(0f, -0.45f, 0f));
        j020 = j017.Child("wheel_2_land_right", JointRole.Deform, new Vector3(0f, -0.45f, 1.4f));
        j021 = j000.Child("beam", JointRole.Deform, new Vector3(0f, 38f, 0f));
        j022 = j021.Child("boom", JointRole.Deform, new Vector3(0f, 0f, 14f));
        j023 = j022.Child("boom_tip", JointRole.Deform, new Vector3(0f, 0f, 42f));
        j024 = j021.Child("cab", JointRole.Deform, new Vector3(2.6f, -3f, 4f));
        j025 = j021.Child("trolley", JointRole.Deform, new Vector3(0f, -1.2f, 6f));
        j026 = j025.Child("drum", JointRole.Deform, new Vector3(0f, 0.8f, 0f));
        j027 = j025.Child("spreader", JointRole.Deform, new Vector3(0f, -14f, 0f));
        j028 = j027.Child("twistlock_front_left", JointRole.Deform, new Vector3(1.2f, -0.4f, 6f));
        j029 = j027.Child("twistlock_back_left", JointRole.Deform, new Vector3(1.2f, -0.4f, -6f));
        j030 = j027.Child("twistlock_front_right", JointRole.Deform, new Vector3(-1.2f, -0.4f, 6f));
        j031 = j027.Child("twistlock_back_right", JointRole.Deform, new Vector3(-1.2f, -0.4f, -6f));
        j032 = j025.Child("rope_0_left", JointRole.Deform, new Vector3(1f, -3.4f, 0.12f));
        j033 = j032.Child("rope_1_left", JointRole.Deform, new Vector3(0f, -3.4f, -0.12f));
        j034 = j033.Child("rope_2_left", JointRole.Deform, new Vector3(0f, -3.4f, 0.12f));
        j035 = j034.Child("rope_3_left", JointRole.Deform, new Vector3(0f, -3.4f, -0.12f));
        j036 = j025.Child("rope_0_right", JointRole.Deform, new Vector3(-1f, -3.4f, 0.12f));
        j037 = j036.Child("rope_1_right", JointRole.Deform, new Vector3(0f, -3.4f, -0.12f));
        j038 = j037.Child("rope_2_right", JointRole.Deform, new Vector3(0f, -3.4f, 0.12f));
        j039 = j038.Child("rope_3_right", JointRole.Deform, new Vector3(0f, -3.4f, -0.12f));
        j040 = j024.Child("operator_shoulder", JointRole.Deform, new Vector3(0.2f, 1f, 0f));
        j041 = j040.Child("operator_elbow", JointRole.Deform, new Vector3(0f, -0.28f, -0.03f));
        j042 = j041.Child("operator_wrist", JointRole.Deform, new Vector3(0f, -0.24f, 0.12f));
    }

    private void Section_Controls(RigDraft rig)
    {
        c000 = rig.Control("c_gantry").PlacedAt(j000);
        c001 = rig.Control("c_leg_sea_left").Under(c000).PlacedAt(j001);
        c002 = rig.Control("c_bogie_sea_left").Under(c001).PlacedAt(j002);
        c003 = rig.Control("c_wheel_0_sea_left").Under(c002).PlacedAt(j003).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c004 = rig.Control("c_wheel_1_sea_left").Under(c002).PlacedAt(j004).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c005 = rig.Control("c_wheel_2_sea_left").Under(c002).PlacedAt(j005).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c006 = rig.Control("c_leg_land_left").Under(c000).PlacedAt(j006);
        c007 = rig.Control("c_bogie_land_left").Under(c006).PlacedAt(j007);
        c008 = rig.Control("c_wheel_0_land_left").Under(c007).PlacedAt(j008).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c009 = rig.Control("c_wheel_1_land_left").Under(c007).PlacedAt(j009).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c010 = rig.Control("c_wheel_2_land_left").Under(c007).PlacedAt(j010).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c011 = rig.Control("c_leg_sea_right").Under(c000).PlacedAt(j011);
        c012 = rig.Control("c_bogie_sea_right").Under(c011).PlacedAt(j012);
        c013 = rig.Control("c_wheel_0_sea_right").Under(c012).PlacedAt(j013).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c014 = rig.Control("c_wheel_1_sea_right").Under(c012).PlacedAt(j014).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c015 = rig.Control("c_wheel_2_sea_right").Under(c012).PlacedAt(j015).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c016 = rig.Control("c_leg_land_right").Under(c000).PlacedAt(j016);
        c017 = rig.Control("c_bogie_land_right").Under(c016).PlacedAt(j017);
        c018 = rig.Control("c_wheel_0_land_right").Under(c017).PlacedAt(j018).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c019 = rig.Control("c_wheel_1_land_right").Under(c017).PlacedAt(j019).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c020 = rig.Control("c_wheel_2_land_right").Under(c017).PlacedAt(j020).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        c021 = rig.Control("c_beam").Under(c000).PlacedAt(j021);
        c022 = rig.Control("c_boom").Under(c021).PlacedAt(j022).Lock(Channels.Move).LimitTurn(Axis.X, -82f, 0f);
        c023 = rig.Control("c_boom_tip").Under(c022).PlacedAt(j023);
        c024 = rig.Control("c_cab").Under(c021).PlacedAt(j024);
        c025 = rig.Control("c_trolley").Under(c021).PlacedAt(j025).Lock(Channels.Turn).LimitMove(Axis.Z, -16f, 44f);
        c026 = rig.Control("c_drum").Under(c025).PlacedAt(j026);
        c027 = rig.Control("c_spreader").Under(c025).PlacedAt(j027).LimitMove(Axis.Y, -22f, 12f);
        c028 = rig.Control("c_twistlock_front_left").Under(c027).PlacedAt(j028).Lock(Channels.Move).LimitTurn(Axis.Y, 0f, 90f);
        c029 = rig.Control("c_twistlock_back_left").Under(c027).PlacedAt(j029).Lock(Channels.Move).LimitTurn(Axis.Y, 0f, 90f);
        c030 = rig.Control("c_twistlock_front_right").Under(c027).PlacedAt(j030).Lock(Channels.Move).LimitTurn(Axis.Y, 0f, 90f);
        c031 = rig.Control("c_twistlock_back_right").Under(c027).PlacedAt(j031).Lock(Channels.Move).LimitTurn(Axis.Y, 0f, 90f);
    }

    private void Section_Drives(RigDraft rig)
    {
        rig.Drive(j000).ByChannels(c000);
        rig.Drive(j001).ByChannels(c001);
        rig.Drive(j002).ByChannels(c002);
        rig.Drive(j003).ByChannels(c003);
        rig.Drive(j004).ByChannels(c004);
        rig.Drive(j005).ByChannels(c005);
        rig.Drive(j006).ByChannels(c006);
        rig.Drive(j007).ByChannels(c007);
        rig.Drive(j008).ByChannels(c008);
        rig.Drive(j009).ByChannels(c009);
        rig.Drive(j010).ByChannels(c010);
        rig.Drive(j011).ByChannels(c011);
        rig.Drive(j012).ByChannels(c012);
        rig.Drive(j013).ByChannels(c013);
        rig.Drive(j014).ByChannels(c014);
        rig.Drive(j015).ByChannels(c015);
        rig.Drive(j016).ByChannels(c016);
        rig.Drive(j017).ByChannels(c017);
        rig.Drive(j018).ByChannels(c018);
        rig.Drive(j019).ByChannels(c019);
        rig.Drive(j020).ByChannels(c020);
        rig.Drive(j021).ByChannels(c021);
        rig.Drive(j022).ByChannels(c022);
        rig.Drive(j023).ByChannels(c023);
        rig.Drive(j024).ByChannels(c024);
        rig.Drive(j025).ByChannels(c025);
        rig.Drive(j026).ByChannels(c026);
        rig.Drive(j027).ByChannels(c027);
        rig.Drive(j028).ByChannels(c028);
        rig.Drive(j029).ByChannels(c029);
        rig.Drive(j030).ByChannels(c030);
        rig.Drive(j031).ByChannels(c031);
    }

    private void Section_Solvers(RigDraft rig)
    {
        var g00 = rig.Group("solvers_group").Under(c000);
        var g01 = rig.Group("rope_left_group").Under(g00).PlacedAt(j032);
        var h01 = rig.Chain(j032, j035);
        var k01a = h01.Copy("slack").Under(g01);
        var k01b = h01.Copy("taut").Under(g01);
        rig.Drive(k01a.Of(j032)).ByChannels(rig.Control("c_slack_0_left").Under(c025).PlacedAt(j032));
        rig.Drive(k01a.Of(j033)).ByChannels(rig.Control("c_slack_1_left").Under(c025).PlacedAt(j033));
        rig.Drive(k01a.Of(j034)).ByChannels(rig.Control("c_slack_2_left").Under(c025).PlacedAt(j034));
        rig.Drive(k01a.Of(j035)).ByChannels(rig.Control("c_slack_3_left").Under(c025).PlacedAt(j035));
        rig.Drive(k01b.Root).ByChannels(c025).KeepingOffset();
        rig.Drive(k01b.Tip).ByChannels(c027).KeepingOffset();
        var w01 = c027.Switch("taut_left", 1f);
        rig.Blend(h01).From(k01a, w01.Inverse).From(k01b, w01);
        var g02 = rig.Group("rope_right_group").Under(g00).PlacedAt(j036);
        var h02 = rig.Chain(j036, j039);
        var k02a = h02.Copy("slack").Under(g02);
        var k02b = h02.Copy("taut").Under(g02);
        rig.Drive(k02a.Of(j036)).ByChannels(rig.Control("c_slack_0_right").Under(c025).PlacedAt(j036));
        rig.Drive(k02a.Of(j037)).ByChannels(rig.Control("c_slack_1_right").Under(c025).PlacedAt(j037));
        rig.Drive(k02a.Of(j038)).ByChannels(rig.Control("c_slack_2_right").Under(c025).PlacedAt(j038));
        rig.Drive(k02a.Of(j039)).ByChannels(rig.Control("c_slack_3_right").Under(c025).PlacedAt(j039));
        rig.Drive(k02b.Root).ByChannels(c025).KeepingOffset();
        rig.Drive(k02b.Tip).ByChannels(c027).KeepingOffset();
        var w02 = c027.Switch("taut_right", 1f);
        rig.Blend(h02).From(k02a, w02.Inverse).From(k02b, w02);
        var h03 = rig.Chain(j040, j042);
        var k03a = h03.Copy("ik").Under(c024);
        var m03 = rig.Control("c_operator_hand").Under(c024).PlacedAt(j042);
        var p03 = rig.Control("c_operator_pole").Under(c024).PlacedAt(h03.PolePoint(0.4f));
        rig.TwoBone(k03a).Reach(m03).Face(p03);
        rig.Blend(h03).From(k03a, 1f);
        rig.Label("l_taut_left", "TAUT").Under(c027).ShownBy(w01);
        rig.Label("l_taut_right", "TAUT").Under(c027).ShownBy(w02);
    }
}

#endregion
