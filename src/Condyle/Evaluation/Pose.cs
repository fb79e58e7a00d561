using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What an animator sets: the channels of controls and the values of switches, dials and choices, by id. What isn't set is at rest.</summary>
internal sealed class Pose
{
    private readonly Dictionary<int, Trs> channels = [];
    private readonly Dictionary<int, double> settings = [];

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
    public Pose SetSwitch(int id, double value) => Set(id, value, "switch");

    /// <summary>Sets a dial.</summary>
    /// <exception cref="ArgumentException">The value isn't finite.</exception>
    public Pose SetDial(int id, double value) => Set(id, value, "dial");

    /// <summary>Picks an option, or stands between two: by so much of the way from the one to the other.</summary>
    /// <exception cref="ArgumentException">The amount isn't finite.</exception>
    public Pose SetChoice(RigOption from, RigOption to, double amount)
    {
        foreach (var option in from.Choice.Options)
            Set(option.Id, (option == from ? 1 - amount : 0) + (option == to ? amount : 0), "option");
        return this;
    }

    /// <summary>Sets the value of one option by itself; whoever does sets the others too.</summary>
    /// <exception cref="ArgumentException">The value isn't finite.</exception>
    public Pose SetOption(int id, double value) => Set(id, value, "option");

    public Pose SetChoice(RigOption picked) => SetChoice(picked, picked, 1);

    public Trs ChannelsOf(RigNode node) => channels.TryGetValue(node.Id, out var set) ? set : Trs.Identity;

    /// <summary>The value of a switch, a dial or an option.</summary>
    public double ValueOf(RigElement setting) => settings.TryGetValue(setting.Id, out var set) ? set : RestOf(setting);

    /// <summary>The value that a switch, a dial, an option or a measured angle has at rest.</summary>
    public static double RestOf(RigElement value) => value switch
    {
        RigSwitch given => Facts.Known(given.AtRest, $"The default of {given.Title}"),
        RigDial dial => DialRange.Of(dial).AtRest,
        RigOption option => option == option.Choice.Options[0] ? 1 : 0,
        RigMeasure => 0,
        _ => throw new InvalidOperationException($"{value.Title} has no value."),
    };

    private Pose Set(int id, double value, string what)
    {
        settings[id] = IsFinite(value) ? value : throw new ArgumentException($"The {what} value {Invariant.Print(value)} is not a finite number.", nameof(value));
        return this;
    }

    private static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);
}
