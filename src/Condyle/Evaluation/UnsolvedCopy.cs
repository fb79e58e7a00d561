using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A copy as its solver finds it: its channels at zero, under its parent as it is now. All that a solver does is relative to it, so that rest holds.
/// </summary>
internal sealed class UnsolvedCopy
{
    private readonly RigCopy copy;
    private readonly Affine3d[] placements;

    private UnsolvedCopy(RigCopy copy, PoseFrames frames)
    {
        this.copy = copy;
        placements = [.. copy.Joints.Select(frames.PlacementOf)];
        Frames = new Affine3d[placements.Length];
        for (var i = 0; i < Frames.Length; i++)
            Frames[i] = i == 0 ? frames.StandOf(copy.Joints[0]) : Frames[i - 1] * placements[i];
        Bones = [.. Frames.Skip(1).Select((next, i) => next.Origin - Frames[i].Origin)];
        Lengths = [.. Bones.Select(bone => bone.Length)];
        Length = Lengths.Sum();
    }

    /// <summary>The joints' frames in the world.</summary>
    public Affine3d[] Frames { get; }

    /// <summary>From each joint to the next, in the world.</summary>
    public Vector3d[] Bones { get; }

    public double[] Lengths { get; }

    /// <summary>The bones' lengths together.</summary>
    public double Length { get; }

    /// <summary>How far the tip is from the root.</summary>
    public double Reach => (Frames[Frames.Length - 1].Origin - Frames[0].Origin).Length;

    public static UnsolvedCopy Of(RigCopy copy, PoseFrames frames) => new(copy, frames);

    /// <summary>The channels that turn the joints in the world and lengthen their bones.</summary>
    /// <param name="turned">The joints' rotations in the world.</param>
    /// <param name="factors">How many times its length each bone has.</param>
    /// <param name="moved">How far the root moves in the world.</param>
    /// <remarks>
    /// Under a parent with uneven scale a bone changes length as it turns, which no rotation can hold: the joints then take the directions
    /// of the solution as nearly as <see cref="Affine3d.Frame"/> does.
    /// </remarks>
    public Trs[] Channels(Quaterniond[] turned, double[] factors, Vector3d moved, PoseFrames frames)
    {
        var channels = new Trs[turned.Length];
        var stand = Frames[0];
        for (var i = 0; i < channels.Length; i++)
        {
            if (i > 0)
                stand *= placements[i];
            var local = stand.Inverse() * Affine3d.Rigid(Vector3d.Zero, turned[i]);
            var move = i == 0 ? stand.Inverse().Turn(moved) : Longer(placements[i], factors[i - 1]);
            channels[i] = frames.Project(copy.Joints[i], local) with { Translation = move };
            stand *= channels[i].ToAffine();
        }

        return channels;
    }

    /// <summary>The move, behind its placement, that puts a joint at so many times its distance from the joint above.</summary>
    private static Vector3d Longer(Affine3d placement, double factor) =>
        factor == 1 ? Vector3d.Zero : placement.Inverse().Turn(placement.Origin * (factor - 1));
}
