namespace Harbour;

public sealed class Rig : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var shade = lamp.Child("shade", at: new Vector3(0, -0.2f, 0.1f));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        control.LimitTurn(Axis.X, -10, 10).LimitMove(Axis.Y, -1, 0);
        var other = rig.Control("turn_shade").Under(control).PlacedAt(shade).Lock(Channels.All).Unlock(Channels.TurnX);
        rig.Drive(shade).ByChannels(other);
        foreach (var each in new[] { control, other })
            each.LimitTurn(Axis.Z, -30, 30); // one of them has it free
        var swing = control.Dial("swing", -10, 10);
        var arm = rig.Control("arm_lamp").Under(control).PlacedAt(lamp).Lock(Channels.All).LimitTurn(Axis.Y, -20, 20); // what a dial turns is locked for animators
        rig.Response(swing).Key(-10, -20).Key(10, 20).OntoTurn(arm, Axis.Y);
        other.Under(arm);
    }
}
