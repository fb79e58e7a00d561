using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What an animator sets: the channels of controls and the values of switches, by id. What isn't set is at rest.</summary>
internal sealed class Pose
{
    private readonly Dictionary<int, Trs> channels = [];
    private readonly Dictionary<int, double> switches = [];

    /// <summary>Sets a control's channels; the rotation is made a unit.</summary>
    /// <exception cref="ArgumentException">A number isn't finite.</exception>
    public Pose Set(int control, Trs value)
    {
        var (t, r, s) = value;
        channels[control] = IsFinite(t.Length) && IsFinite(r.Length) && IsFinite(s.Length)
            ? value with { Rotation = r.Normalized() }
            : throw new ArgumentException($"The channels {value} are not finite numbers.", nameof(value));
        return this;
    }

    /// <summary>Sets a switch.</summary>
    /// <exception cref="ArgumentException">The value isn't finite.</exception>
    public Pose SetSwitch(int id, double value)
    {
        switches[id] = IsFinite(value) ? value : throw new ArgumentException($"The switch value {Invariant.Print(value)} is not a finite number.", nameof(value));
        return this;
    }

    public Trs ChannelsOf(RigNode node) => channels.TryGetValue(node.Id, out var set) ? set : Trs.Identity;

    public double ValueOf(RigSwitch given) =>
        switches.TryGetValue(given.Id, out var set) ? set
        : given.AtRest.TryKnown(out var atRest) ? atRest
        : throw new RigGeometryException($"The default of {given.Title} isn't known.");

    private static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);
}
