using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Keeps the locked channels of a control as they are, and notes what that costs and which limits are passed.</summary>
internal sealed class ControlLocks(CompiledControl control, List<MatchNote> notes)
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    /// <summary>The wanted move with what is locked as it was.</summary>
    public Vector3d Move(Vector3d set, Vector3d wanted)
    {
        var kept = new Vector3d(
            IsLocked(Channels.MoveX) ? set.X : wanted.X,
            IsLocked(Channels.MoveY) ? set.Y : wanted.Y,
            IsLocked(Channels.MoveZ) ? set.Z : wanted.Z);
        foreach (var axis in Axes)
        {
            var (along, off) = (Vector3d.Dot(kept, Vector3d.Unit(axis)), Vector3d.Dot(wanted - kept, Vector3d.Unit(axis)));
            if (Math.Abs(off) > LimbMatch.AllowedMetres)
                Note(MatchNoteKind.Locked, Weigh.Metres(Math.Abs(off)), $"would have to move {Figures.Millimetres(off)} along {axis}, which is locked");
            NoteMoved(axis, along);
        }

        return kept;
    }

    /// <summary>The wanted turn with what is locked as it was; single axes are told apart as <see cref="Angles"/>, in the way that comes nearest to what is wanted.</summary>
    public Quaterniond Turn(Quaterniond set, Quaterniond wanted)
    {
        var (kept, after) = Nearest(Angles.Of(set), Angles.Of(wanted), wanted);
        if (Off(kept, wanted) > LimbMatch.AllowedDegrees)
        {
            foreach (var axis in Axes)
            {
                var off = Math.IEEERemainder(after[axis] - kept[axis], 360);
                if (Math.Abs(off) > LimbMatch.AllowedDegrees)
                    Note(MatchNoteKind.Locked, Weigh.Degrees(Math.Abs(off)), $"would have to turn {Figures.Degrees(off)} about {axis}, which is locked");
            }
        }

        foreach (var axis in Axes)
            NoteTurned(axis, kept[axis]);
        return Kept(set, wanted);
    }

    /// <summary>The same turn, of which nothing is noted.</summary>
    public Quaterniond Kept(Quaterniond set, Quaterniond wanted) =>
        (control.Locked & Channels.Turn) switch { Channels.None => wanted, Channels.Turn => set, _ => Nearest(Angles.Of(set), Angles.Of(wanted), wanted).Kept.Turn };

    // A slew of 120° reads as 60° with half turns about both other axes as well, and at a quarter turn about Y nobody can tell X from Z: neither is a turn about what is locked.
    private (Angles Kept, Angles After) Nearest(Angles set, Angles wanted, Quaterniond turn)
    {
        var (nearest, least) = (default((Angles Kept, Angles After)), double.PositiveInfinity);
        foreach (var before in set.Readings)
        {
            foreach (var after in wanted.Readings)
            {
                var kept = new Angles(
                    IsLocked(Channels.TurnX) ? before.X : after.X,
                    IsLocked(Channels.TurnY) ? before.Y : after.Y,
                    IsLocked(Channels.TurnZ) ? before.Z : after.Z);
                if (Off(kept, turn) is var off && off < least - LimbMatch.AllowedDegrees)
                    (nearest, least) = ((kept, after), off);
            }
        }

        return nearest;
    }

    private static double Off(Angles kept, Quaterniond wanted) => Quaterniond.Angle(kept.Turn, wanted) * (180 / Math.PI);

    /// <summary>Notes which limits are passed by what is set, of the two ways to read a turn by the shorter one.</summary>
    public void Look(Vector3d move, Quaterniond turn)
    {
        var angles = Angles.Of(turn).Shorter;
        foreach (var axis in Axes)
        {
            NoteMoved(axis, Vector3d.Dot(move, Vector3d.Unit(axis)));
            NoteTurned(axis, angles[axis]);
        }
    }

    private void NoteMoved(Axis axis, double along)
    {
        if (LimitOf(turns: false, axis) is { } limit && Beyond(limit, along) is > LimbMatch.AllowedMetres and var beyond)
            Note(MatchNoteKind.BeyondLimit, Weigh.Metres(beyond), $"moves {Figures.Millimetres(along)} along {axis}, and its limits are {Figures.Millimetres(limit.From)} and {Figures.Millimetres(limit.To)}");
    }

    private void NoteTurned(Axis axis, double degrees)
    {
        if (LimitOf(turns: true, axis) is { } limit && Beyond(limit, degrees) is > LimbMatch.AllowedDegrees and var beyond)
            Note(MatchNoteKind.BeyondLimit, Weigh.Degrees(beyond), $"turns {Figures.Degrees(degrees)} about {axis}, and its limits are {Figures.Degrees(limit.From)} and {Figures.Degrees(limit.To)}");
    }

    private static double Beyond(CompiledLimit limit, double value) => Math.Max(limit.From - value, value - limit.To);

    private void Note(MatchNoteKind kind, double off, string what) => notes.Add(new(kind, $"'{control.Name}' {what}.") { Off = off });

    private CompiledLimit? LimitOf(bool turns, Axis axis) => control.Limits.FirstOrDefault(limit => limit.Turns == turns && limit.Axis == axis);

    private bool IsLocked(Channels channel) => (control.Locked & channel) != 0;
}
