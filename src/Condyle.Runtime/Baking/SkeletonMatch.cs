using System.Globalization;
using System.Numerics;
using Condyle.Naming;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Baking;

/// <summary>Which node of a delivered file each exported joint is, found by name; and that both rest alike.</summary>
internal sealed class SkeletonMatch
{
    private const int MostNames = 8;

    /// <summary>How far the rest in the file may be from the rest in the rig: metres (in proportion to the joint's offset above 1 m), degrees, factors.</summary>
    private const float SameMetres = 1e-5f, SameDegrees = 1e-3f, SameScale = 1e-5f;

    private readonly CompiledRig rig;
    private readonly string path;
    private readonly GltfSkeleton skeleton;
    private readonly int[] matches;

    private SkeletonMatch(CompiledRig rig, GltfFile file)
    {
        (this.rig, path, skeleton) = (rig, file.Path, GltfSkeleton.Read(file));
        matches = [.. rig.Joints.Select(joint => skeleton.IndexOf(joint.Name))];
        NotInRig = [.. skeleton.Joints.Index().Where(joint => !matches.Contains(joint.Index)).Select(joint => joint.Item.Name)];
    }

    /// <summary>Joints of the file that the rig doesn't declare; they keep their rest.</summary>
    public IReadOnlyList<string> NotInRig { get; }

    /// <summary>The joints' rest in the file, by joint.</summary>
    public IReadOnlyList<JointRest> Rest => [.. matches.Select(match => skeleton.Joints[match]).Select(joint => new JointRest(joint.Translation, joint.Rotation, joint.Scale, joint.IsExact))];

    /// <exception cref="BadInputException">A joint of the rig isn't in the file, hangs elsewhere or rests elsewhere.</exception>
    public static SkeletonMatch Of(CompiledRig rig, GltfFile file)
    {
        var match = new SkeletonMatch(rig, file);
        match.CheckNames();
        foreach (var joint in rig.Joints)
        {
            match.CheckParent(joint);
            match.CheckRest(joint);
        }

        return match;
    }

    /// <summary>The clip as it goes into the file.</summary>
    public GltfClip ToGltf(BakedClip clip) => new(
        clip.Name,
        [.. clip.Times],
        [.. clip.Tracks.Select(track => new GltfTrack(skeleton.Joints[matches[track.Joint]].Node, track.Translations, track.Rotations, track.Scales)
        {
            TranslationKeys = track.TranslationKeys,
            RotationKeys = track.RotationKeys,
            ScaleKeys = track.ScaleKeys,
        })])
    {
        Extras = ClipExtras.Of(clip),
    };

    private void CheckNames()
    {
        var missing = rig.Joints.Where(joint => matches[joint.Index] < 0).Select(joint => joint.Name).ToList();
        if (missing.Count == 0)
            return;
        var problem = $"{Count(missing)} of the rig '{rig.Name}' {(missing.Count == 1 ? "isn't" : "aren't")} in the file: {List(missing, Nearest)}";
        if (NotInRig.Count > 0)
            problem += $"; {Count(NotInRig)} of the file {(NotInRig.Count == 1 ? "isn't" : "aren't")} in the rig: {List(NotInRig, _ => "")}";
        throw new BadInputException(path, problem, "Build the rig on this file's skeleton, or name the file that it was built on");
    }

    private string Nearest(string name) => NearestNames.To(name, NotInRig, 1) is [var near] ? $" (nearest: '{near}')" : "";

    private void CheckParent(CompiledJoint joint)
    {
        var above = skeleton.Joints[matches[joint.Index]].Parent;
        if (joint.Parent >= 0)
        {
            if (above != matches[joint.Parent])
                throw Differs(joint, $"hangs under {(above < 0 ? "nothing" : $"'{skeleton.Joints[above].Name}'")} in the file and under '{rig.Joints[joint.Parent].Name}' in the rig");
            return;
        }

        // The rig's world begins at its root joint, so what the file has above must not move it.
        for (; above >= 0; above = skeleton.Joints[above].Parent)
        {
            if (Difference(skeleton.Joints[above], Vector3.Zero, Quaternion.Identity, Vector3.One) is not null)
                throw Differs(joint, $"hangs under '{skeleton.Joints[above].Name}' in the file, which is placed, turned or scaled and isn't in the rig");
        }
    }

    private void CheckRest(CompiledJoint joint)
    {
        if (Difference(skeleton.Joints[matches[joint.Index]], joint.RestTranslation, joint.RestRotation, joint.RestScale) is { } difference)
            throw Differs(joint, $"rests elsewhere in the file than in the rig: {difference}");
    }

    private BadInputException Differs(CompiledJoint joint, string problem) => new(
        path, problem, "Build the rig on this file's skeleton, or name the file that it was built on", joint.Name, $"/nodes/{skeleton.Joints[matches[joint.Index]].Node}");

    private static string? Difference(GltfJoint file, Vector3 translation, Quaternion rotation, Vector3 scale)
    {
        var metres = Vector3.Distance(file.Translation, translation);
        var degrees = Condyle.Evaluation.Quaterniond.Angle(file.Rotation, rotation) * (180 / Math.PI);
        var factor = Vector3.Distance(file.Scale, scale);
        return metres > SameMetres * Math.Max(1, translation.Length()) ? Say($"{metres * 1000:0.###} mm apart")
            : degrees > SameDegrees ? Say($"turned by {degrees:0.####}°")
            : factor > SameScale * Math.Max(1, scale.Length()) ? Say($"scaled by {file.Scale.X:0.####}, {file.Scale.Y:0.####}, {file.Scale.Z:0.####} and not by {scale.X:0.####}, {scale.Y:0.####}, {scale.Z:0.####}")
            : null;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Count(IReadOnlyCollection<string> names) => names.Count == 1 ? "1 joint" : $"{names.Count} joints";

    private static string List(IReadOnlyCollection<string> names, Func<string, string> note) =>
        string.Join(", ", names.Take(MostNames).Select(name => $"'{name}'{note(name)}")) + (names.Count > MostNames ? $" and {names.Count - MostNames} more" : "");
}
