namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);

        // One is there for what it offers, one for its place, one marks a pocket, one carries a label, one is measured, and one is ridden.
        var panel = rig.Control("panel").Under(world);
        rig.Response(panel.Dial("nod", -20, 20)).Key(-20, -20).Key(20, 20).OntoTurn(joints.Head, Axis.X);
        var mark = rig.Control("mark").Under(hips).PlacedAt(joints.Chest);
        rig.Drive(joints.Waist).ByChannels(rig.Control("turn_waist").Under(hips).PlacedAt(joints.Waist));
        var lean = rig.Control("lean").Under(hips).PlacedAt(mark);
        rig.Response(rig.Angle(lean).About(Axis.X)).Key(-30, -30).Key(30, 30).OntoTurn(joints.Chest, Axis.X);
        rig.Control("pocket").Under(mark);
        rig.Label("docker_label", "DOCKER").Under(rig.Control("sign").Under(world));
        var quay = rig.Control("quay");
        rig.Space(hips).In("world", world).In("quay", quay);
    }
}
