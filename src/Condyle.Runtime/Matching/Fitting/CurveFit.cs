using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching.Fitting;

/// <summary>Sets the controls that a curve goes through, and the switch by which it stretches, so that its joints come as near as they can to where they should be.</summary>
/// <remarks>
/// It begins with each control as the joint that rests nearest carries it: at the ends that is their turn too. From there the squares of what the joints are off get the least sum (<see cref="ControlFit"/>).
/// A curve may be longer or shorter than its chain, so a pose that isn't found from there is looked for with the last control further out or in. Where none of these finds it, the nearest has it.
/// In a motion the last frame's answer is tried first, and the others only where neither it nor the first of them is about as far off as when all were tried: a pose that no curve takes goes on for many frames.
/// </remarks>
/// <param name="pose">The pose, whose controls are set.</param>
/// <param name="through">The controls.</param>
/// <param name="stretch">The switch by which the chain takes the curve's length; none: it has none of its own.</param>
/// <param name="targets">Where the joints should be, from root to tip.</param>
internal sealed class CurveFit(LivePose pose, IReadOnlyList<Handle> through, RigSwitch? stretch, IReadOnlyList<FitTarget> targets)
{
    /// <summary>How much further out the last control begins, as a share of the chain's length.</summary>
    private static readonly double[] Starts = [0, 0.25, -0.25, 0.5, -0.5];

    /// <summary>Sums of squares that differ by less than this share are alike: of what joints are off that is a fifth.</summary>
    private const double Alike = 0.4;

    private const double HalfStretched = 0.5;

    private readonly Vector3d beyond = ((targets[^1].Frame.Origin - targets[^2].Frame.Origin).Direction ?? Vector3d.Zero)
        * targets.Zip(targets.Skip(1), (joint, next) => (next.Frame.Origin - joint.Frame.Origin).Length).Sum();

    /// <summary>Sets the controls near to where they will be.</summary>
    public void Begin() => Begin(Starts[0]);

    /// <summary>Sets them.</summary>
    public void Run()
    {
        var answer = Find(pose.Answers?.Of(through[^1]));
        Set(answer);
        pose.Answers?.Take(through[^1], answer);
    }

    private CurveAnswer Find(CurveAnswer? last)
    {
        CurveAnswer? nearest = null;
        if (last is not null)
        {
            Set(last);
            nearest = Fitted();
        }

        foreach (var further in Starts)
        {
            if (nearest is { Holds: true })
                break;
            if (further != Starts[0] && last is { Holds: false } && Math.Abs(nearest!.Off - last.Searched) <= Alike * last.Searched)
                return nearest with { Searched = last.Searched };
            Begin(further);
            var found = Fitted();
            if (nearest is null || found.Holds || found.Off < nearest.Off)
                nearest = found;
        }

        return nearest!;
    }

    private CurveAnswer Fitted()
    {
        var off = ControlFit.Run(pose, through, stretch, targets);
        return new([.. through.Select(pose.SetOn)], stretch is null ? 0 : pose.ValueOf(stretch), off, Holds());
    }

    private void Set(CurveAnswer answer)
    {
        foreach (var (handle, channels) in through.Zip(answer.Channels))
            pose.Set(handle, channels);
        if (stretch is not null)
            pose.Set(stretch, answer.Stretch);
    }

    private bool Holds() => targets.All(target => pose.Frames.WorldOf(target.Node).Frame is var found
        && (found.Origin - target.Frame.Origin).Length <= LimbMatch.AllowedMetres
        && (!target.Turns || Compare.Angle(found, target.Frame) <= LimbMatch.AllowedDegrees));

    private void Begin(double further)
    {
        pose.Unnoted(() =>
        {
            foreach (var handle in through)
                pose.Place(handle, Guess(handle, handle == through[^1] ? further : 0));
        });
        if (stretch is not null)
            pose.Set(stretch, HalfStretched);
    }

    private Affine3d Guess(Handle handle, double further)
    {
        var rest = pose.Frames.Rest;
        var node = rest.WorldOf(handle.Node).Frame;
        var nearest = targets.MinBy(target => (rest.WorldOf(target.Node).Origin - node.Origin).Length)!;
        var carried = nearest.Frame * rest.WorldOf(nearest.Node).Frame.Inverse() * node;
        return carried with { Origin = carried.Origin + (beyond * further) };
    }
}
