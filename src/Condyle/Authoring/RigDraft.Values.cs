using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <content>Dials, choices, measured angles, and what they set.</content>
public sealed partial class RigDraft
{
    /// <summary>Begins to measure how far a node is turned from its rest; finish it with <c>About</c>.</summary>
    /// <param name="node">The node whose rotation is measured.</param>
    /// <returns>The measured angle.</returns>
    [OverloadResolutionPriority(1)]
    public Measure Angle(Node node, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Angle(node, Place(file, line));

    /// <inheritdoc cref="Angle(Node, string, int)"/>
    public Measure Angle(Node node) => Angle(node, PlaceId.None);

    internal Measure Angle(Node node, PlaceId place) => new(this, Record(new MeasureBegun(place, node.IdIn(this))));

    /// <summary>Begins a curve from a dial to channels and morph targets; give it keys with <c>Key</c> and finish it with <c>OntoTurn</c> and the like.</summary>
    /// <param name="dial">The dial.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Response Response(Dial dial, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Response(dial, Place(file, line));

    /// <inheritdoc cref="Response(Dial, string, int)"/>
    public Response Response(Dial dial) => Response(dial, PlaceId.None);

    internal Response Response(Dial dial, PlaceId place) => RespondTo(dial.IdIn(this), place);

    /// <summary>Begins a curve from a switch to channels and morph targets; give it keys with <c>Key</c> and finish it with <c>OntoTurn</c> and the like.</summary>
    /// <param name="given">The switch.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Response Response(Switch given, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Response(given, Place(file, line));

    /// <inheritdoc cref="Response(Switch, string, int)"/>
    public Response Response(Switch given) => Response(given, PlaceId.None);

    internal Response Response(Switch given, PlaceId place) => RespondTo(given.IdIn(this), place);

    /// <summary>Begins a curve from a measured angle to channels and morph targets; give it keys with <c>Key</c> and finish it with <c>OntoTurn</c> and the like.</summary>
    /// <param name="measure">The measured angle.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Response Response(Measure measure, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Response(measure, Place(file, line));

    /// <inheritdoc cref="Response(Measure, string, int)"/>
    public Response Response(Measure measure) => Response(measure, PlaceId.None);

    internal Response Response(Measure measure, PlaceId place) => RespondTo(measure.IdIn(this), place);

    /// <summary>
    /// Begins a sentence that lets a control ride one of several nodes; say each with <c>In</c>. It gives the control a choice named <c>space</c>,
    /// whose options are those of the nodes in order; the first is picked at rest.
    /// </summary>
    /// <param name="control">The control that rides.</param>
    /// <returns>The sentence.</returns>
    [OverloadResolutionPriority(1)]
    public Space Space(Control control, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Space(control, Place(file, line));

    /// <inheritdoc cref="Space(Control, string, int)"/>
    public Space Space(Control control) => Space(control, PlaceId.None);

    internal Space Space(Control control, PlaceId place) =>
        new(this, Record(new SpaceBegun(place, control.IdIn(this), Record(new ChoiceAdded(place, control.IdIn(this), "space", isOpen: false)), ownsChoice: true)));

    /// <summary>Begins a sentence that lets a control ride one of several nodes by a choice that is there already; say each with <c>In</c>.</summary>
    /// <param name="control">The control that rides.</param>
    /// <param name="by">The choice, on this control or another one.</param>
    /// <returns>The sentence.</returns>
    public Space Space(Control control, Choice by, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Space(control, by, Place(file, line));

    internal Space Space(Control control, Choice by, PlaceId place) => new(this, Record(new SpaceBegun(place, control.IdIn(this), by.IdIn(this), ownsChoice: false)));

    /// <summary>The options that a choice was made with, which follow it in the log; none where they aren't known.</summary>
    internal List<int>? OptionsOf(int choice)
    {
        if (Log[choice] is not ChoiceAdded { IsOpen: false })
            return null;
        var options = new List<int>();
        for (var id = choice + 1; id < Log.Count && Log[id] is OptionAdded added && added.Choice == choice; id++)
            options.Add(id);
        return options;
    }

    /// <summary>An option of a choice by its name; none where that isn't known.</summary>
    /// <exception cref="ArgumentException">The choice certainly has none of that name.</exception>
    internal int? OptionOf(int choice, Text name)
    {
        if (OptionsOf(choice) is not { } options || name.IsOpen)
            return null;
        foreach (var option in options)
        {
            if (NameOf(option).SameAs(name) == Answer.Yes)
                return option;
        }

        return options.Exists(option => NameOf(option).IsOpen) ? null : throw new ArgumentException(
            $"Choice '{NameOf(choice)}' has no option '{name}', only {string.Join(", ", options.Select(option => $"'{NameOf(option)}'"))}. Use one of them, or add it to the choice.");
    }

    /// <summary>Adds an option to a choice that a space has made.</summary>
    /// <exception cref="ArgumentException">The choice certainly has one of that name.</exception>
    internal int AddOption(int choice, Text name, PlaceId place)
    {
        for (var id = choice + 1; id < Log.Count; id++)
        {
            if (Log[id] is OptionAdded added && added.Choice == choice && added.Name.SameAs(name) == Answer.Yes)
                throw new ArgumentException($"'{name}' is an option of the space already. Give each node to ride an option of its own, so that an animator can tell them apart.");
        }

        return Record(new OptionAdded(place, choice, name));
    }

    private Response RespondTo(int source, PlaceId place) => new(this, Record(new ResponseBegun(place, source)));
}
