namespace Harbour;

// A cable that is led over both sides: its name is right for its middle.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var systems = rig.Group("systems_group");
        var drum = rig.Skeleton("winch").Root("drum");
        var eye = drum.Child("eye_left", at: new Vector3(0.2f, 1, 0));
        var load = eye.Child("load_right", at: new Vector3(-0.4f, 1, 0));
        rig.Spine(rig.Chain(drum, load), "cable_left", systems, systems, new SpineOptions { Curves = true }); // finds CDY1003
    }
}
