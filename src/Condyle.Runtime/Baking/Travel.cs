using System.Numerics;
using Condyle.Evaluation;
using Condyle.Naming;

namespace Condyle.Runtime.Baking;

/// <summary>
/// Takes the way that a character goes off its joints, or puts it onto the root joint. A way is a move over the ground and a turn about Y,
/// from where the joint that shows it rests to where it is.
/// </summary>
internal sealed class Travel
{
    private readonly CompiledRig rig;
    private readonly int shows;
    private readonly int root;
    private readonly bool inPlace;
    private readonly Affine3d rest;
    private readonly Affine3d rootRest;
    private readonly Vector3d[] signs;
    private readonly bool[] changed;

    private Travel(CompiledRig rig, int shows, bool inPlace)
    {
        (this.rig, this.shows, this.inPlace) = (rig, shows, inPlace);
        for (root = shows; rig.Joints[root].Parent >= 0;)
            root = rig.Joints[root].Parent;
        var playback = new Playback(rig, JointRest.Of(rig), [], [0]);
        playback.At(0, 0);
        (rest, rootRest) = (playback.World(shows), playback.World(root));
        signs = [.. rig.Joints.Select(joint => (Vector3d)joint.RestScale)];
        changed = [.. rig.Joints.Select(joint => inPlace ? joint.Parent < 0 : joint.Index == root || joint.Parent == root)];
    }

    /// <summary>Whether the way is taken off, so that the clip has to keep it.</summary>
    public bool IsTakenOff => inPlace;

    /// <summary>Whether it changes a joint's channels.</summary>
    public bool Changes(int joint) => changed[joint];

    /// <summary>What the settings ask for; null when the joints stay as they are posed.</summary>
    /// <exception cref="BadInputException">The joint isn't there, or has no root above it.</exception>
    public static Travel? Of(CompiledRig rig, RootMotion wanted)
    {
        if (wanted.Way == RootMotionWay.AsPosed)
            return null;
        var shows = wanted.Joint is { } name ? Find(rig, name) : rig.Joints.First(joint => joint.Parent < 0).Index;
        if (wanted.Way == RootMotionWay.OntoRoot && rig.Joints[shows].Parent < 0)
            throw new BadInputException($"rig '{rig.Name}'", "is the root joint itself, so its way can't go onto the joint above it", "Name a joint below the root, such as the pelvis", rig.Joints[shows].Name);
        return new Travel(rig, shows, wanted.Way == RootMotionWay.InPlace);
    }

    /// <summary>Where the joint's way has led by now.</summary>
    public Affine3d Way(RigInstance live)
    {
        var now = live.World(shows);
        var turn = now.Rotation * rest.Rotation.Inverse;
        var heading = new Quaterniond(0, turn.Y, 0, turn.W).Normalized();
        var from = rest.Origin with { Y = 0 };
        return Affine3d.Rigid((now.Origin with { Y = 0 }) - heading.Rotate(from), heading);
    }

    /// <summary>Where a joint is in the world afterwards.</summary>
    public Affine3d World(RigInstance live, int joint, Affine3d way) =>
        inPlace ? way.Inverse() * live.World(joint)
        : joint == root ? way * rootRest
        : live.World(joint);

    /// <summary>The channels of a joint that it changes afterwards.</summary>
    public Trs Channels(RigInstance live, int joint, Affine3d way)
    {
        var world = World(live, joint, way);
        var parent = rig.Joints[joint].Parent;
        return (parent < 0 ? world : World(live, parent, way).Inverse() * world).ToTrs(signs[joint]);
    }

    private static int Find(CompiledRig rig, string name)
    {
        try
        {
            return rig.JointIndex(name);
        }
        catch (ArgumentException problem)
        {
            throw new BadInputException($"rig '{rig.Name}'", $"there is no joint '{name}' to show the way", $"The nearest: {string.Join(", ", NearestNames.To(name, rig.Joints.Select(joint => joint.Name), 3).Select(near => $"'{near}'"))}", inner: problem);
        }
    }
}

/// <summary>Collects the way that was taken off.</summary>
internal sealed class TravelSamples(int count)
{
    private readonly Vector3[] translations = new Vector3[count];
    private readonly Quaternion[] rotations = new Quaternion[count];

    public void Take(int sample, Affine3d way)
    {
        var turn = way.Rotation.ToSingle();
        translations[sample] = new Vector3((float)way.Origin.X, 0, (float)way.Origin.Z);
        rotations[sample] = sample > 0 && Quaternion.Dot(rotations[sample - 1], turn) < 0 ? -turn : turn;
    }

    public RootTravel ToTravel() => new(translations, rotations);
}
