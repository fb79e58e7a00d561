using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>
/// How far motion between two samples may be from the line between them as far as the samples can tell: twice what the joints' channels bend there (their
/// second differences), carried down the chain. For smooth motion a line is off by an eighth of its second difference, at a key of the clip halfway between
/// samples by a quarter, over a jump by all of it. What goes beyond happens between two samples and can't be seen by them.
/// </summary>
internal sealed class FrameRateBound
{
    private const double Share = 2, DegreesPerRadian = 180 / Math.PI;

    private readonly CompiledRig rig;
    private readonly Playback playback;
    private readonly int frames;
    private readonly double[] metres, radians;
    private readonly (double Metres, double Radians)[][] bends;
    private readonly int[] bendsOf = [-1, -1];
    private readonly Trs[][] samples;
    private readonly int[] samplesOf = [-1, -1, -1];
    private int gap = -1;

    public FrameRateBound(CompiledRig rig, Playback everyFrame, int frames)
    {
        (this.rig, playback, this.frames) = (rig, everyFrame, frames);
        (metres, radians) = (new double[rig.Joints.Count], new double[rig.Joints.Count]);
        bends = [new (double, double)[rig.Joints.Count], new (double, double)[rig.Joints.Count]];
        samples = [.. samplesOf.Select(_ => new Trs[rig.Joints.Count])];
    }

    /// <summary>How far a joint may be off after a sample and before the next.</summary>
    public Off Of(int joint, int frame)
    {
        if (gap != frame)
            Work(frame);
        return new Off(metres[joint], radians[joint] * DegreesPerRadian);
    }

    private void Work(int frame)
    {
        gap = frame;

        // At an end of the clip the bend at the end itself isn't known: the nearest two are, since one alone may be where the motion turns from one bend to the other.
        var first = Math.Clamp(frame, 1, Math.Max(1, frames - 3));
        var (here, next) = (BendAt(first), BendAt(Math.Min(first + 1, Math.Max(1, frames - 2))));
        var places = playback.At(frame, 0);
        foreach (var joint in rig.Joints)
        {
            var (move, turn) = (Share * Math.Max(here[joint.Index].Metres, next[joint.Index].Metres), Share * Math.Max(here[joint.Index].Radians, next[joint.Index].Radians));
            var parent = joint.Parent;
            var bone = parent < 0 ? 0 : (places[joint.Index].Origin - places[parent].Origin).Length;
            var unit = parent < 0 ? 1 : playback.Unit(parent);
            metres[joint.Index] = (parent < 0 ? 0 : metres[parent] + (radians[parent] * bone)) + (move * unit);
            radians[joint.Index] = Math.Min(Math.PI, (parent < 0 ? 0 : radians[parent]) + turn);
        }
    }

    private (double Metres, double Radians)[] BendAt(int middle)
    {
        var slot = middle % 2;
        if (bendsOf[slot] == middle)
            return bends[slot];
        bendsOf[slot] = middle;

        // Two samples alone bend nothing that anyone could see: all the way between them counts.
        var (before, at, after) = (SampleAt(middle - 1), SampleAt(middle), SampleAt(frames < 3 ? middle - 1 : middle + 1));
        for (var joint = 0; joint < at.Length; joint++)
        {
            bends[slot][joint] = (
                (before[joint].Translation + after[joint].Translation - (at[joint].Translation * 2)).Length,
                NearRotations.Angle(before[joint].Rotation.Inverse * at[joint].Rotation, at[joint].Rotation.Inverse * after[joint].Rotation));
        }

        return bends[slot];
    }

    private Trs[] SampleAt(int frame)
    {
        var slot = frame % samples.Length;
        if (samplesOf[slot] == frame)
            return samples[slot];
        samplesOf[slot] = frame;
        for (var joint = 0; joint < samples[slot].Length; joint++)
            samples[slot][joint] = playback.Local(joint, frame, 0);
        return samples[slot];
    }
}
