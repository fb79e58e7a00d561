using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Rounds what was worked out in double precision into the arrays of a batch.</summary>
internal static class Pack
{
    public static Affine Single(Affine3d frame) => new(frame.X.ToSingle(), frame.Y.ToSingle(), frame.Z.ToSingle(), frame.Origin.ToSingle());

    /// <summary>A frame without scale.</summary>
    public static Rigid Rigid(Affine3d frame) => new(frame.Origin.ToSingle(), frame.Rotation.ToSingle());

    /// <inheritdoc cref="Rigid"/>
    public static Placement Placement(Affine3d frame) => new(Single(frame), frame.Rotation.ToSingle());

    public static Affines Frames(IReadOnlyList<Affine3d> frames)
    {
        var packed = new Affines(frames.Count);
        for (var i = 0; i < frames.Count; i++)
            packed[i] = Single(frames[i]);
        return packed;
    }

    public static Vectors Vectors(IReadOnlyList<Vector3d> vectors)
    {
        var packed = new Vectors(vectors.Count);
        for (var i = 0; i < vectors.Count; i++)
            packed[i] = vectors[i].ToSingle();
        return packed;
    }

    public static Rotations Rotations(IReadOnlyList<Quaterniond> rotations)
    {
        var packed = new Rotations(rotations.Count);
        for (var i = 0; i < rotations.Count; i++)
            packed[i] = rotations[i].ToSingle();
        return packed;
    }
}
