namespace Condyle.Evaluation;

/// <summary>Keeps each bone of a chain in a cone about where the joint above, turned as <see cref="BoneTurns"/> has it, carries it from rest.</summary>
/// <remarks>A bone beyond its cone is taken to the nearest direction in it. Not continuous where the bone is opposite to the cone's axis: there it goes across the bend's normal.</remarks>
internal sealed class ConeLimits(BoneTurns turns, IReadOnlyList<double> cones)
{
    private Quaterniond above;

    /// <summary>Begins at the root.</summary>
    public void Begin() => above = Quaterniond.Identity;

    /// <summary>The next bone from root to tip within its cone.</summary>
    public Vector3d Next(int bone, Vector3d direction, Vector3d normal)
    {
        var kept = Nearest(direction, above.Rotate(turns.Rest[bone]), cones[bone], normal);
        above = turns.Next(bone, above, kept, normal);
        return kept;
    }

    /// <summary>Takes all bones into their cones.</summary>
    public void Keep(Vector3d[] bones, Vector3d normal)
    {
        Begin();
        for (var i = 0; i < bones.Length; i++)
            bones[i] = Next(i, bones[i], normal);
    }

    private static Vector3d Nearest(Vector3d direction, Vector3d axis, double cone, Vector3d normal)
    {
        var (along, across) = (Vector3d.Dot(direction, axis), direction.Across(axis));
        if (Math.Atan2(across.Length, along) <= cone)
            return direction;
        var beside = across.Length > BoneTurns.Opposite ? across.Direction!.Value : Vector3d.Cross(normal, axis).Direction ?? axis.AnyAcross();
        return (axis * Math.Cos(cone)) + (beside * Math.Sin(cone));
    }
}
