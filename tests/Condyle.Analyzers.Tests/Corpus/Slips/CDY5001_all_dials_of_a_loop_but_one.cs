namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var mast = rig.Skeleton("mast").Root("mast");
        var stand = rig.Control("move_mast").PlacedAt(mast);
        rig.Drive(mast).ByChannels(stand);
        for (var i = 0; i < 3; i++)
        {
            var lamp = mast.Child($"lamp_{i}", at: new Vector3(0, i + 2, 0.3f));
            rig.Drive(lamp).ByChannels(rig.Control($"turn_lamp_{i}").Under(stand).PlacedAt(lamp));
            var tilt = stand.Dial($"tilt_{i}", -30, 30, unit: DialUnit.Degrees); // finds CDY5001
            if (i == 0)
                rig.Response(tilt).Key(-30, -30).Key(30, 30).OntoTurn(lamp, Axis.X);
        }
    }
}
