namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("crane").Root("jib", at: new Vector3(0, 4, 0));
        var luff = rig.Control("luff").PlacedAt(jib).LimitTurn(Axis.X, -60, 20);
        rig.Drive(jib).ByChannels(luff);

        // From the value at rest, 30, it goes 50 up or down.
        var storm = luff.Dial("storm", 0, 1, 0.5f);
        rig.Response(storm).Key(0, 80).Key(0.5f, 30).Key(1, 45).OntoTurn(luff, Axis.Y);
        rig.Response(storm).Key(0, 80).Key(0.5f, 60).Key(1, 0).OntoTurn(luff, Axis.X);

        // A line by two of its points.
        var calm = luff.Dial("calm", 0, 1);
        rig.Response(calm).Key(-1, -10).Key(1, 10).Continued().OntoTurn(luff, Axis.Z);

        // Two that make up for each other.
        rig.Response(luff.Switch("gust")).Key(0, 0).Key(1, -0.5f).OntoMove(luff.LimitMove(Axis.Y, -0.2f, 0.2f), Axis.Y);
        rig.Response(rig.Angle(rig.Control("wind").PlacedAt(jib)).About(Axis.X)).Key(-180, -0.1f).Key(180, 0.4f).OntoMove(luff, Axis.Y);
    }
}
