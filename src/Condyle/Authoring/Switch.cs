using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A value from 0 to 1 on a control that weights a blend.</summary>
public readonly record struct Switch : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Switch(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "switch");

    internal int Id => HandleGuard.Of(draft, "switch", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>One minus the switch. Asking twice gives the same weight.</summary>
    [TakesOpen]
    public Weight Inverse => ((Weight)this).Inverse;

    /// <summary>The sum of a switch and a weight.</summary>
    [TakesOpen]
    public static Weight operator +(Switch left, Weight right) => (Weight)left + right;

    /// <inheritdoc cref="op_Addition(Switch, Weight)"/>
    public static Weight operator +(float left, Switch right) => left + (Weight)right;

    /// <summary>The difference of a switch and a weight.</summary>
    [TakesOpen]
    public static Weight operator -(Switch left, Weight right) => (Weight)left - right;

    /// <summary>A number less a switch: one minus a switch is its inverse.</summary>
    public static Weight operator -(float left, Switch right) => left - (Weight)right;

    /// <summary>The product of a switch and a weight.</summary>
    [TakesOpen]
    public static Weight operator *(Switch left, Weight right) => (Weight)left * right;

    /// <inheritdoc cref="op_Multiply(Switch, Weight)"/>
    public static Weight operator *(float left, Switch right) => left * (Weight)right;

    /// <summary>Shows the same switch on a further control: setting it there sets it everywhere.</summary>
    /// <param name="control">The further control.</param>
    /// <returns>The switch.</returns>
    [OverloadResolutionPriority(1)]
    public Switch AlsoOn(Control control, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => AlsoOn(control, Draft.Place(file, line));

    /// <inheritdoc cref="AlsoOn(Control, string, int)"/>
    public Switch AlsoOn(Control control) => AlsoOn(control, PlaceId.None);

    internal Switch AlsoOn(Control control, PlaceId place)
    {
        Draft.Record(new SettingShown(place, Id, control.IdIn(Draft)));
        return this;
    }

    internal static Switch Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Switch));

    /// <summary>The switch's name on its control.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Draft.NameOf(Id).ToString();
}
