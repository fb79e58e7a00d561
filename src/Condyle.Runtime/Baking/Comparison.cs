namespace Condyle.Runtime.Baking;

/// <summary>Collects, joint by joint, how far a rig's live joints are from where they should be.</summary>
internal sealed class Comparison(CompiledRig rig)
{
    private readonly (double Metres, float At)[] metres = new (double, float)[rig.Joints.Count];
    private readonly (double Degrees, float At)[] degrees = new (double, float)[rig.Joints.Count];

    public void Take(int joint, Off off, float at)
    {
        if (off.Metres > metres[joint].Metres)
            metres[joint] = (off.Metres, at);
        if (off.Degrees > degrees[joint].Degrees)
            degrees[joint] = (off.Degrees, at);
    }

    public Deviation Of(int joint) => new(
        new Peak(metres[joint].Metres, rig.Joints[joint].Name, metres[joint].At),
        new Peak(degrees[joint].Degrees, rig.Joints[joint].Name, degrees[joint].At));

    public Deviation Largest => Deviation.Largest(rig.Joints.Select(joint => Of(joint.Index)));
}

/// <summary>How far one place is from another.</summary>
internal readonly record struct Off(double Metres, double Degrees)
{
    private const double DegreesPerRadian = 180 / Math.PI;

    public static Off Between(Place actual, Place should) =>
        new((actual.Origin - should.Origin).Length, NearRotations.Angle(actual.Rotation, should.Rotation) * DegreesPerRadian);
}
