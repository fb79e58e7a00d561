using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A control's pick among named options. The weights of all options add up to one.</summary>
public readonly record struct Choice : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Choice(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "choice");

    internal int Id => HandleGuard.Of(draft, "choice", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The weight that is one while an option is picked and zero while another one is.</summary>
    /// <param name="option">One of the choice's options.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentException">The choice has no such option.</exception>
    public Weight Is(string option) => Is(option, PlaceId.None);

    internal Weight Is(Text option, PlaceId place)
    {
        var options = Draft.OptionsOf(Id);
        return new(Draft, Draft.OptionOf(Id, option) is { } found ? OptionWeight.Of(options!.IndexOf(found), options) : Fact<WeightPolynomial>.Open);
    }

    /// <summary>Shows the same choice on a further control: setting it there sets it everywhere.</summary>
    /// <param name="control">The further control.</param>
    /// <returns>The choice.</returns>
    [OverloadResolutionPriority(1)]
    public Choice AlsoOn(Control control, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => AlsoOn(control, Draft.Place(file, line));

    /// <inheritdoc cref="AlsoOn(Control, string, int)"/>
    public Choice AlsoOn(Control control) => AlsoOn(control, PlaceId.None);

    internal Choice AlsoOn(Control control, PlaceId place)
    {
        Draft.Record(new SettingShown(place, Id, control.IdIn(Draft)));
        return this;
    }

    internal static Choice Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Choice));

    /// <summary>The choice's name on its control.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Draft.NameOf(Id).ToString();
}
