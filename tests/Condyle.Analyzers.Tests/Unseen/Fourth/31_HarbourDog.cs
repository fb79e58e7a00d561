using Condyle;
using System.Numerics;

namespace Unseen.Fourth.R31;

// my first rig! the dog that sleeps next to the bollards
public class HarbourDog : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // skeleton
        Skeleton skeleton = rig.Skeleton("dog");
        Joint pelvis = skeleton.Root("pelvis", JointRole.Deform, new Vector3(0, 0.5f, -0.2f));
        Joint chest = pelvis.Child("chest", JointRole.Deform, new Vector3(0, 0.02f, 0.4f));
        Joint head = chest.Child("head", JointRole.Deform, new Vector3(0, 0.15f, 0.2f));

        Joint hip1 = pelvis.Child("hip_left", JointRole.Deform, new Vector3(0.08f, 0, 0));
        Joint knee1 = hip1.Child("knee_left", JointRole.Deform, new Vector3(0, -0.22f, 0.06f));
        Joint ankle1 = knee1.Child("ankle_left", JointRole.Deform, new Vector3(0, -0.2f, -0.08f));

        Joint hip2 = pelvis.Child("hip_right", JointRole.Deform, new Vector3(-0.08f, 0, 0));
        Joint knee2 = hip2.Child("knee_right", JointRole.Deform, new Vector3(0, -0.22f, 0.06f));
        Joint ankle2 = knee2.Child("ankle_right", JointRole.Deform, new Vector3(0, -0.2f, -0.08f));

        // main controls
        Control world = rig.Control("world");
        Control body = rig.Control("body");
        body.Under(world);
        body.PlacedAt(pelvis);
        Control chestControl = rig.Control("chest_control");
        chestControl.Under(body);
        chestControl.PlacedAt(chest);
        Control headControl = rig.Control("head_control");
        headControl.Under(chestControl);
        headControl.PlacedAt(head);

        rig.Drive(pelvis).ByChannels(body);
        rig.Drive(chest).ByChannels(chestControl);
        rig.Drive(head).ByMatrix(headControl);

        // LEFT LEG
        Chain chain1 = rig.Chain(hip1, ankle1);
        Group group1 = rig.Group("leg_left_group");
        group1.PlacedAt(pelvis);
        rig.Drive(group1).ByMatrix(body);
        Copy ik1 = chain1.Copy("ik");
        ik1.Under(group1);
        Copy fk1 = chain1.Copy("fk");
        fk1.Under(group1);
        Control paw1 = rig.Control("paw_left");
        paw1.Under(world);
        paw1.PlacedAt(ankle1);
        Control pole1 = rig.Control("knee_pole_left");
        pole1.Under(world);
        pole1.PlacedAt(ik1.PolePoint(0.3f));
        rig.TwoBone(ik1).Reach(paw1).Face(pole1);
        Control turnHip1 = rig.Control("turn_hip_left");
        turnHip1.Under(body);
        turnHip1.PlacedAt(hip1);
        Control turnKnee1 = rig.Control("turn_knee_left");
        turnKnee1.Under(turnHip1);
        turnKnee1.PlacedAt(knee1);
        Control turnAnkle1 = rig.Control("turn_ankle_left");
        turnAnkle1.Under(turnKnee1);
        turnAnkle1.PlacedAt(ankle1);
        rig.Drive(fk1.Of(hip1)).ByChannels(turnHip1);
        rig.Drive(fk1.Of(knee1)).ByChannels(turnKnee1);
        rig.Drive(fk1.Of(ankle1)).ByChannels(turnAnkle1);
        Switch switch1 = paw1.Switch("fk");
        rig.Blend(chain1).From(ik1, switch1.Inverse).From(fk1, switch1);

        // RIGHT LEG
        Chain chain2 = rig.Chain(hip2, ankle2);
        Group group2 = rig.Group("leg_right");
        group2.PlacedAt(pelvis);
        rig.Drive(group2).ByMatrix(body);
        Copy ik2 = chain2.Copy("ik");
        ik2.Under(group2);
        Copy fk2 = chain2.Copy("fk");
        fk2.Under(group2);
        Control paw2 = rig.Control("paw_right");
        paw2.Under(world);
        paw2.PlacedAt(ankle2);
        Control pole2 = rig.Control("knee_pole_right");
        pole2.Under(world);
        pole2.PlacedAt(ik2.PolePoint(0.3f));
        rig.TwoBone(ik2).Reach(paw2).Face(pole1);
        Control turnHip2 = rig.Control("turn_hip_right");
        turnHip2.Under(body);
        turnHip2.PlacedAt(hip2);
        Control turnKnee2 = rig.Control("turn_knee_right");
        turnKnee2.Under(turnHip2);
        turnKnee2.PlacedAt(knee2);
        Control turnAnkle2 = rig.Control("turn_ankle_right");
        turnAnkle2.Under(turnKnee2);
        turnAnkle2.PlacedAt(ankle2);
        rig.Drive(fk2.Of(hip2)).ByChannels(turnHip2);
        rig.Drive(fk2.Of(knee2)).ByChannels(turnKnee2);
        rig.Drive(fk2.Of(ankle2)).ByChannels(turnAnkle2);
        Switch switch2 = paw2.Switch("fk");
        rig.Blend(chain2).From(ik2, switch2).From(fk2, switch2);
    }
}
