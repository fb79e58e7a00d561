using System.Numerics;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>A control that rides one of several nodes by a choice, and where its frames and channels lie in a pose.</summary>
/// <param name="Choice">The choice's index.</param>
/// <param name="Control">Its index, and the slot of the channels that an animator sets.</param>
/// <param name="Channel">The slot of its channels with the responses on top.</param>
/// <param name="World">Its world frame.</param>
/// <param name="Base">The frame that carries it.</param>
/// <param name="Offset">The fixed frame between that one and its channels.</param>
/// <param name="Unlocked">The channels that an animator may change.</param>
internal sealed record Rider(int Choice, int Control, int Channel, WorldSlot World, WorldSlot Base, Affine Offset, Channels Unlocked)
{
    /// <summary>Sets the control's channels so that its frame is a given one in the world, as far as they are unlocked. The frame that carries it is there already.</summary>
    public void Place(in Affine world, Buffers pose)
    {
        var local = world.In(Base.In(pose) * Offset);
        if (IsUnlocked(Channels.Turn))
        {
            var responded = Quaternion.Conjugate(pose.Turns[Control]) * pose.Turns[Channel];
            pose.Turns[Control] = Quaternion.Normalize(Rotation.Of(local, pose.Scales[Channel]) * Quaternion.Conjugate(responded));
        }

        var move = pose.Moves[Control] + local.Origin - pose.Moves[Channel];
        var kept = pose.Moves[Control];
        pose.Moves[Control] = new(
            IsUnlocked(Channels.MoveX) ? move.X : kept.X,
            IsUnlocked(Channels.MoveY) ? move.Y : kept.Y,
            IsUnlocked(Channels.MoveZ) ? move.Z : kept.Z);
        if (IsUnlocked(Channels.Scale))
        {
            var (set, was) = (pose.Scales[Control], pose.Scales[Channel]);
            var now = local.ScaleFor(was);
            pose.Scales[Control] = new(Rescaled(set.X, was.X, now.X), Rescaled(set.Y, was.Y, now.Y), Rescaled(set.Z, was.Z, now.Z));
        }
    }

    // What responses do to the scale stays; one of zero has no way back.
    private static float Rescaled(float set, float was, float now) => was == 0 ? set : set * (now / was);

    // Enum.HasFlag allocates until its caller is compiled for speed.
    private bool IsUnlocked(Channels channels) => (Unlocked & channels) == channels;
}
