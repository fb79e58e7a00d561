using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Bows a chain evenly in the plane of its bend, or straightens it, to bring its ends nearer to each other or further apart.</summary>
internal readonly ref struct ChainBow(ReadOnlySpan<float> lengths, float length, Plane plane)
{
    /// <summary>Halvings of the interval in which the bow is looked for: a float tells no more apart.</summary>
    private const int Halvings = 24;

    private readonly ReadOnlySpan<float> lengths = lengths;

    /// <summary>The longest bone.</summary>
    public int Longest
    {
        get
        {
            var longest = 0;
            for (var i = 1; i < lengths.Length; i++)
            {
                if (lengths[i] > lengths[longest])
                    longest = i;
            }

            return longest;
        }
    }

    /// <summary>The nearest that the ends can come to each other; a distance that they have counts, whatever rounding says.</summary>
    public float Inner(float atRest) => MathF.Min(MathF.Max(0, (2 * lengths[Longest]) - length), atRest);

    /// <summary>
    /// The angle by which to bow a chain that is to begin with its ends at another distance: about half of what a straight chain needs for it,
    /// and less the nearer the chain is to being folded, so that it isn't bowed past itself.
    /// </summary>
    public float AngleFor(float distance, float atRest)
    {
        var inner = Inner(atRest);
        var openness = length > inner ? MathF.Min(1, (atRest - inner) / (length - inner)) : 0;
        return 2 * openness * (Turn(distance / length) - Turn(atRest / length));
    }

    /// <summary>Bows bones further: from the first to the last they turn by an angle in all, half of it at the first, towards the side of the bend.</summary>
    public void Bow(ReadOnlySpan<Vector3> bones, float angle, Span<Vector3> bowed)
    {
        var before = 0f;
        for (var i = 0; i < bones.Length; i++)
        {
            var middle = (before + (lengths[i] / 2)) / length;
            bowed[i] = Vector3.Transform(bones[i], Quaternion.CreateFromAxisAngle(plane.Normal, angle * (0.5f - middle)));
            before += lengths[i];
        }
    }

    /// <summary>
    /// Brings the ends of bones to a distance that they nearly have, and into the plane's line: too far apart, they are bowed; too near, all lean towards the line
    /// between the ends, or, where one of them points back along it, are bowed the other way.
    /// </summary>
    public void Close(Span<Vector3> bones, float distance, Span<Vector3> tried)
    {
        var tip = Tip(bones);
        if (!Rotation.TryDirection(tip, out var line))
            line = plane.Line;
        if (tip.Length() >= distance)
            TryChange(Way.Bows, bones, line, distance, tried);
        else if (!PointsBack(bones, line) || !TryChange(Way.Unbows, bones, line, distance, tried))
            TryChange(Way.Leans, bones, line, distance, tried);
    }

    /// <summary>Where bones end.</summary>
    public Vector3 Tip(ReadOnlySpan<Vector3> bones)
    {
        var tip = Vector3.Zero;
        for (var i = 0; i < bones.Length; i++)
            tip += bones[i] * lengths[i];
        return tip;
    }

    private static float Turn(float share) => MathF.Atan2(MathF.Sqrt(MathF.Max(0, (1 - share) * (1 + share))), MathF.Min(share, 1));

    private static bool PointsBack(ReadOnlySpan<Vector3> bones, Vector3 line)
    {
        foreach (var bone in bones)
        {
            if (Vector3.Dot(bone, line) < 0)
                return true;
        }

        return false;
    }

    /// <summary>Changes bones by as much as brings their ends to a distance; false where no change does.</summary>
    private bool TryChange(Way way, Span<Vector3> bones, Vector3 line, float distance, Span<Vector3> tried)
    {
        var (from, to) = (0f, (float)Evaluation.ChainBow.FirstTry);
        for (; IsStill(to, bones, line, distance, way, tried); to *= 2)
        {
            if (to >= 1)
                return false;
            from = to;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            if (IsStill(middle, bones, line, distance, way, tried))
                from = middle;
            else
                to = middle;
        }

        Change((from + to) / 2, bones, line, way, tried);
        if (!Rotation.TryDirection(Tip(tried), out var changed))
            changed = plane.Line;
        var swing = Rotation.Between(changed, plane.Line, plane.Normal);
        for (var i = 0; i < bones.Length; i++)
            bones[i] = Vector3.Transform(tried[i], swing);
        return true;
    }

    private bool IsStill(float by, ReadOnlySpan<Vector3> bones, Vector3 line, float distance, Way way, Span<Vector3> tried)
    {
        Change(by, bones, line, way, tried);
        return Tip(tried).Length() < distance == (way != Way.Bows);
    }

    private void Change(float by, ReadOnlySpan<Vector3> bones, Vector3 line, Way way, Span<Vector3> tried)
    {
        if (way != Way.Leans)
        {
            Bow(bones, (way == Way.Bows ? by : -by) * MathF.PI, tried);
            return;
        }

        for (var i = 0; i < bones.Length; i++)
        {
            if (!Rotation.TryDirection((bones[i] * (1 - by)) + (line * by), out tried[i]))
                tried[i] = line;
        }
    }

    private enum Way
    {
        Bows,
        Unbows,
        Leans,
    }
}
