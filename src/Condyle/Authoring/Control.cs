using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A handle that an animator moves. Its channels read zero at rest; it moves and turns freely and doesn't scale, unless said otherwise.</summary>
public readonly partial record struct Control : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Control(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "control");

    internal int Id => HandleGuard.Of(draft, "control", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The control's name.</summary>
    public string Name => NameFact.ToString();

    internal Text NameFact => Draft.NameOf(Id);

    /// <summary>Puts the control under another node of the rig; without it the control stands in the world.</summary>
    /// <param name="parent">The node whose motion the control takes.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control Under(Node parent, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Under(parent, Draft.Place(file, line));

    /// <inheritdoc cref="Under(Node, string, int)"/>
    public Control Under(Node parent) => Under(parent, PlaceId.None);

    internal Control Under(Node parent, PlaceId place)
    {
        Draft.Record(new ParentSet(place, Id, parent.IdIn(Draft)));
        return this;
    }

    /// <summary>Stands the control where another node rests, so that its channels read zero there; without it the control stands at its parent.</summary>
    /// <param name="target">The node whose rest frame the control takes.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control PlacedAt(Node target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PlacedAt(target, Draft.Place(file, line));

    /// <inheritdoc cref="PlacedAt(Node, string, int)"/>
    public Control PlacedAt(Node target) => PlacedAt(target, PlaceId.None);

    internal Control PlacedAt(Node target, PlaceId place)
    {
        Draft.Record(new PlacedAtNode(place, Id, target.IdIn(Draft)));
        return this;
    }

    /// <summary>Stands the control at a spot that the rig's geometry gives.</summary>
    /// <param name="spot">The spot, for instance a pole point.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control PlacedAt(Spot spot, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PlacedAt(spot, Draft.Place(file, line));

    /// <inheritdoc cref="PlacedAt(Spot, string, int)"/>
    public Control PlacedAt(Spot spot) => PlacedAt(spot, PlaceId.None);

    internal Control PlacedAt(Spot spot, PlaceId place)
    {
        Draft.Record(new PlacedAtSpot(place, Id, spot.IdIn(Draft)));
        return this;
    }

    /// <summary>
    /// Stands the control as the mirror image of its counterpart on the other side, over the character's YZ plane: the same moves, turns and scales on both make mirrored motion.
    /// </summary>
    /// <remarks>
    /// Its frame is left-handed, as a mirror image is, however the joints of the two sides mirror. So what follows it keeps its offset: say <c>KeepingOffset()</c>.
    /// </remarks>
    /// <param name="other">The control of the other side.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control Mirroring(Control other, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Mirroring(other, Draft.Place(file, line));

    /// <inheritdoc cref="Mirroring(Control, string, int)"/>
    public Control Mirroring(Control other) => Mirroring(other, PlaceId.None);

    internal Control Mirroring(Control other, PlaceId place)
    {
        Draft.Record(new PlacedAsImage(place, Id, other.IdIn(Draft)));
        return this;
    }

    /// <summary>Takes channels away from the animator.</summary>
    /// <param name="channels">The channels that can't change.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control Lock(Channels channels, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Lock(channels, Draft.Place(file, line));

    /// <inheritdoc cref="Lock(Channels, string, int)"/>
    public Control Lock(Channels channels) => Lock(channels, PlaceId.None);

    internal Control Lock(Fact<Channels> channels, PlaceId place)
    {
        Given.ChannelsOfANode(channels);
        Draft.Record(new LockChanged(place, Id, channels, locked: true));
        return this;
    }

    /// <summary>Gives channels to the animator; scale is locked otherwise.</summary>
    /// <param name="channels">The channels that may change.</param>
    /// <returns>The control.</returns>
    [OverloadResolutionPriority(1)]
    public Control Unlock(Channels channels, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Unlock(channels, Draft.Place(file, line));

    /// <inheritdoc cref="Unlock(Channels, string, int)"/>
    public Control Unlock(Channels channels) => Unlock(channels, PlaceId.None);

    internal Control Unlock(Fact<Channels> channels, PlaceId place)
    {
        Given.ChannelsOfANode(channels);
        Draft.Record(new LockChanged(place, Id, channels, locked: false));
        return this;
    }

    /// <summary>The range in which an animator may turn the control about one of its axes.</summary>
    /// <param name="axis">The axis of the control's own frame.</param>
    /// <param name="fromDegrees">The least angle, in degrees.</param>
    /// <param name="toDegrees">The greatest angle, in degrees.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The axis is none, or an angle is not a number; an infinite one leaves that end open.</exception>
    public Control LimitTurn(Axis axis, float fromDegrees, float toDegrees, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        LimitTurn(axis, fromDegrees, toDegrees, Draft.Place(file, line));

    internal Control LimitTurn(Fact<Axis> axis, Fact<float> fromDegrees, Fact<float> toDegrees, PlaceId place)
    {
        Given.Limits(axis, fromDegrees, toDegrees, $"The turn of '{NameFact}'");
        Draft.Record(new LimitSet(place, Id, turns: true, axis, fromDegrees, toDegrees));
        return this;
    }

    /// <summary>The range in which an animator may move the control along one of its axes.</summary>
    /// <param name="axis">The axis of the control's placement.</param>
    /// <param name="fromMetres">The least distance, in metres.</param>
    /// <param name="toMetres">The greatest distance, in metres.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The axis is none, or a distance is not a number; an infinite one leaves that end open.</exception>
    public Control LimitMove(Axis axis, float fromMetres, float toMetres, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        LimitMove(axis, fromMetres, toMetres, Draft.Place(file, line));

    internal Control LimitMove(Fact<Axis> axis, Fact<float> fromMetres, Fact<float> toMetres, PlaceId place)
    {
        Given.Limits(axis, fromMetres, toMetres, $"The move of '{NameFact}'");
        Draft.Record(new LimitSet(place, Id, turns: false, axis, fromMetres, toMetres));
        return this;
    }

    /// <summary>Adds a value from 0 to 1 to the control, which weights a blend.</summary>
    /// <param name="name">The switch's name on the control, best the tag of what it turns on.</param>
    /// <param name="atRest">Its default, from 0 to 1.</param>
    /// <returns>The switch.</returns>
    [OverloadResolutionPriority(1)]
    public Switch Switch(string name, float atRest = 0f, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Switch(name, atRest, Draft.Place(file, line));

    /// <inheritdoc cref="Switch(string, float, string, int)"/>
    public Switch Switch(string name) => Switch(name, 0f, PlaceId.None);

    internal Switch Switch(Text name, PlaceId place) => Switch(name, 0f, place);

    internal Switch Switch(Text name, Fact<float> atRest, PlaceId place)
    {
        Given.AName(name, $"A switch on '{NameFact}'", "fk");
        Given.Finite(atRest, $"Where switch '{name}' on '{NameFact}' rests");
        return new(Draft, Draft.Record(new SwitchAdded(place, Id, name, atRest)));
    }

    /// <summary>Adds a further value to the control, which responses take on.</summary>
    /// <param name="name">The dial's name on the control, best what it does: <c>curl</c>.</param>
    /// <param name="from">The least value.</param>
    /// <param name="to">The greatest value.</param>
    /// <param name="atRest">Its default, within the range.</param>
    /// <param name="unit">What its numbers count.</param>
    /// <returns>The dial.</returns>
    /// <exception cref="ArgumentException">A number isn't finite, the range has no length, the name is empty, or the unit is none.</exception>
    public Dial Dial(
        string name, float from, float to, float atRest = 0f, DialUnit unit = DialUnit.None, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Dial(name, from, to, atRest, unit, Draft.Place(file, line));

    internal Dial Dial(Text name, Fact<float> from, Fact<float> to, Fact<float> atRest, Fact<DialUnit> unit, PlaceId place)
    {
        Given.AName(name, $"A dial on '{NameFact}'", "curl");
        Given.AUnit(unit);
        Given.Range(from, to, $"Dial '{name}' on '{NameFact}'");
        Given.Finite(atRest, $"The default of dial '{name}' on '{NameFact}'");
        return new(Draft, Draft.Record(new DialAdded(place, Id, name, from, to, atRest, unit)));
    }

    /// <summary>Adds a pick among named options to the control; the first is picked at rest. Each option is a weight, and together they are one.</summary>
    /// <param name="name">The choice's name on the control.</param>
    /// <param name="options">The options, at least one, each with its own name: <c>["world", "chest"]</c>.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentException">There is no option, two have the same name, or a name is empty.</exception>
    public Choice Choice(string name, string[] options, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Choice(name, Text.Each(options), Draft.Place(file, line));

    internal Choice Choice(Text name, Fact<Text[]> options, PlaceId place)
    {
        Given.AName(name, $"A choice on '{NameFact}'", "space");
        var areKnown = options.TryKnown(out var names);
        if (areKnown && names.Length == 0)
            throw new ArgumentException($"Choice '{name}' on '{NameFact}' has no option. Give it one at least.");
        if (areKnown && names.Where(option => !option.IsOpen).GroupBy(option => option).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new ArgumentException($"Choice '{name}' on '{NameFact}' offers '{twice.Key}' more than once. Give each option its own name.");
        foreach (var option in areKnown ? names : [])
            Given.AName(option, $"An option of choice '{name}' on '{NameFact}'", "chest");
        var choice = Draft.Record(new ChoiceAdded(place, Id, name, isOpen: !areKnown));
        foreach (var option in areKnown ? names : [])
            Draft.Record(new OptionAdded(place, choice, option));
        return new(Draft, choice);
    }

    /// <summary>Keeps what a rule finds about this control, with the reason; the analyzer and the program both honour it.</summary>
    /// <param name="rule">The rule's id, for instance <c>CDY1001</c>.</param>
    /// <param name="because">Why the team means it so.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public Control Accept(string rule, string because, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Accept(rule, because, Draft.Place(file, line));

    internal Control Accept(Text rule, Text because, PlaceId place)
    {
        Given.AReason(rule, because);
        Draft.Record(new Accepted(place, Id, rule, because));
        return this;
    }

    internal static Control Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Control));

    /// <summary>A control is a node.</summary>
    [TakesOpen]
    public static implicit operator Node(Control control) => new(control.Draft, control.Id);

    /// <summary>The control's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
