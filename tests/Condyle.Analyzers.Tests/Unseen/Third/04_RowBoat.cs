using System.Numerics;
using Condyle;

namespace Unseen.Third.R04;

// My first rig!! A row boat with two oars and a rudder.
public class RowBoat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // first the bones
        Skeleton skeleton = rig.Skeleton("row_boat");
        Joint boat = skeleton.Root("boat");
        Joint seat = boat.Child("seat", JointRole.Deform, new Vector3(0f, 0.3f, -0.2f));
        Joint rudder = boat.Child("rudder", JointRole.Deform, new Vector3(0f, 0.1f, -1.6f));
        Joint tiller = rudder.Child("tiller", JointRole.Deform, new Vector3(0f, 0.4f, 0.3f));

        // left oar
        Joint oarLeft1 = boat.Child("oar_lock_left", JointRole.Deform, new Vector3(0.6f, 0.4f, 0f));
        Joint oarLeft2 = oarLeft1.Child("oar_shaft_left", JointRole.Deform, new Vector3(0.8f, -0.1f, 0.05f));
        Joint oarLeft3 = oarLeft2.Child("oar_blade_left", JointRole.Deform, new Vector3(0.7f, -0.2f, -0.05f));

        // right oar (same but minus x)
        Joint oarRight1 = boat.Child("oar_lock_right", JointRole.Deform, new Vector3(-0.6f, 0.4f, 0f));
        Joint oarRight2 = oarRight1.Child("oar_shaft_right", JointRole.Deform, new Vector3(-0.8f, -0.1f, 0.05f));
        Joint oarRight3 = oarRight2.Child("oar_blade_right", JointRole.Deform, new Vector3(-0.7f, -0.2f, -0.05f));

        // bench planks, there are 4 of them
        Joint plank1 = seat.Child("plank_1", JointRole.Helper, new Vector3(0f, 0f, -0.3f));
        Joint plank2 = seat.Child("plank_2", JointRole.Helper, new Vector3(0f, 0f, 0f));
        Joint plank3 = seat.Child("plank_3", JointRole.Helper, new Vector3(0f, 0f, 0.3f));
        Joint plank4 = seat.Child("plank_4", JointRole.Helper, new Vector3(0f, 0f, 0.6f));

        // fenders hang over the side, 3 on each
        Joint fenderLeft1 = boat.Child("fender_1_left", JointRole.Deform, new Vector3(0.7f, 0.2f, -0.8f));
        Joint fenderLeft2 = boat.Child("fender_2_left", JointRole.Deform, new Vector3(0.75f, 0.2f, 0f));
        Joint fenderLeft3 = boat.Child("fender_3_left", JointRole.Deform, new Vector3(0.7f, 0.2f, 0.8f));
        Joint fenderRight1 = boat.Child("fender_1_right", JointRole.Deform, new Vector3(-0.7f, 0.2f, -0.8f));
        Joint fenderRight2 = boat.Child("fender_2_right", JointRole.Deform, new Vector3(-0.75f, 0.2f, 0f));
        Joint fenderRight3 = boat.Child("fender_3_right", JointRole.Deform, new Vector3(-0.7f, 0.2f, 0.8f));

        // now the controls
        Control world = rig.Control("world");
        Control boatControl = rig.Control("boat_control");
        boatControl.Under(world);
        boatControl.PlacedAt(boat);
        rig.Drive(boat).ByChannels(boatControl);

        Control rudderControl = rig.Control("rudder_control");
        rudderControl.Under(boatControl);
        rudderControl.PlacedAt(rudder);
        rudderControl.Lock(Channels.Move);
        rudderControl.LimitTurn(Axis.Y, -45f, 45f);
        rig.Drive(rudder).ByMatrix(rudderControl);

        // this is where everything of the oars goes
        Group oars = rig.Group("oars");
        oars.Under(boatControl);

        // LEFT
        Control handleLeft = rig.Control("handle_left");
        handleLeft.Under(boatControl);
        handleLeft.PlacedAt(oarLeft1);
        Control bladeLeft = rig.Control("blade_left");
        bladeLeft.Under(world);
        bladeLeft.PlacedAt(oarLeft3);
        Chain oarLeft = rig.Chain(oarLeft1, oarLeft3);
        Copy ikLeft = oarLeft.Copy("ik");
        ikLeft.Under(oars);
        rig.TwoBone(ikLeft).Reach(bladeLeft);
        Copy fkLeft = oarLeft.Copy("fk");
        fkLeft.Under(oars);
        rig.Drive(fkLeft.Root).ByChannels(handleLeft);
        Switch switchLeft = handleLeft.Switch("ik");
        rig.Blend(oarLeft).From(ikLeft, switchLeft).From(fkLeft, switchLeft.Inverse);

        // RIGHT
        Control handleRight = rig.Control("handle_right");
        handleRight.Under(boatControl);
        handleRight.PlacedAt(oarRight1);
        Control bladeRight = rig.Control("blade_right");
        bladeRight.Under(world);
        bladeRight.PlacedAt(oarRight3);
        Chain oarRight = rig.Chain(oarRight1, oarRight3);
        Copy ikRight = oarRight.Copy("ik");
        ikRight.Under(oars);
        rig.TwoBone(ikRight).Reach(bladeRight);
        Copy fkRight = oarRight.Copy("fk");
        fkRight.Under(oars);
        rig.Drive(fkRight.Root).ByChannels(handleRight);
        Switch switchRight = handleRight.Switch("ik");
        rig.Blend(oarRight).From(ikRight, switchRight).From(fkRight, switchRight);

        // fenders, I learned loops today!
        Joint[] fenders = new Joint[6];
        fenders[0] = fenderLeft1;
        fenders[1] = fenderLeft2;
        fenders[2] = fenderLeft3;
        fenders[3] = fenderRight1;
        fenders[4] = fenderRight2;
        fenders[5] = fenderRight3;
        for (int i = 0; i < fenders.Length; i++)
        {
            string name = "fender_control_" + (i + 1);
            Control fenderControl = rig.Control(name);
            fenderControl.Under(boatControl);
            fenderControl.PlacedAt(fenders[i]);
            rig.Drive(fenders[i]).ByChannels(fenderControl);
        }

        // planks too
        Joint[] planks = { plank1, plank2, plank3, plank4 };
        int number = 1;
        foreach (Joint plank in planks)
        {
            Control plankControl = rig.Control("plank_control_" + number).Under(boatControl).PlacedAt(plank);
            rig.Drive(plank).ByChannels(plankControl);
            number = number + 1;
        }

        // the tiller is for later
        Control tillerControl = rig.Control("tiller_control").Under(rudderControl).PlacedAt(tiller);
        rig.Drive(tiller).ByChannels(tillerControl);
    }
}
