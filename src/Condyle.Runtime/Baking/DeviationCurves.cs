namespace Condyle.Runtime.Baking;

/// <summary>Collects each joint's deviation over time, in a fixed number of steps however long the clip is.</summary>
internal sealed class DeviationCurves(CompiledRig rig, float seconds)
{
    private const int Steps = 240;

    private readonly float[][] on = Empty(rig), between = Empty(rig), degrees = Empty(rig);

    public void Take(int joint, Moment moment, Off off)
    {
        var step = Math.Min(Steps - 1, (int)(moment.Time / seconds * Steps));
        var metres = moment.Kind == MomentKind.OnFrame ? on : between;
        metres[joint][step] = Math.Max(metres[joint][step], (float)off.Metres);
        degrees[joint][step] = Math.Max(degrees[joint][step], (float)off.Degrees);
    }

    public IReadOnlyList<JointCurve> ToCurves() => [.. rig.Joints.Select(joint => new JointCurve(joint.Name, on[joint.Index], between[joint.Index], degrees[joint.Index]))];

    private static float[][] Empty(CompiledRig rig) => [.. rig.Joints.Select(_ => new float[Steps])];
}
