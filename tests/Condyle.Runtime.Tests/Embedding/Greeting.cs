namespace Condyle.Runtime.Tests.Embedding;

/// <summary>Clips in C#, from a file, and one over another. All play and bake alike.</summary>
internal static class Greeting
{
    public static Clip Wave() => new Clip("wave", seconds: 2)
        .Switch("hand_left.fk", at: 0, value: 1)
        .TurnAbout("turn_elbow_left", Axis.X, (0, 0), (0.5f, -70), (1.5f, -70), (2, 0)).Splined("turn_elbow_left")
        .Dial("hand_left.curl", (0, 0), (1, 1)).DialSlope("hand_left.curl", at: 0, perSecond: 2)
        .Mark(0.5f, "hello");

    public static Clip WalkAndWave(Clip walk) => new Clip("walk_and_wave", walk.Seconds)
        .Layer(walk)
        .Layer(new ClipLayer(Wave()) { Under = "chest", StartsAt = 0.5f }.Weight((0, 0), (0.3f, 1), (1.7f, 1), (2, 0)));

    public static IReadOnlyList<Clip> FromFile(CompiledRig rig) => ClipFile.Read("walk.glb", rig).Clips;
}
