using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A further value on a control, with a range and a default: finger curl, heel height, stretch amount. Responses take it on.</summary>
public readonly record struct Dial : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Dial(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "dial");

    internal int Id => HandleGuard.Of(draft, "dial", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Shows the same dial on a further control: setting it there sets it everywhere.</summary>
    /// <param name="control">The further control.</param>
    /// <returns>The dial.</returns>
    [OverloadResolutionPriority(1)]
    public Dial AlsoOn(Control control, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => AlsoOn(control, Draft.Place(file, line));

    /// <inheritdoc cref="AlsoOn(Control, string, int)"/>
    public Dial AlsoOn(Control control) => AlsoOn(control, PlaceId.None);

    internal Dial AlsoOn(Control control, PlaceId place)
    {
        Draft.Record(new SettingShown(place, Id, control.IdIn(Draft)));
        return this;
    }

    internal static Dial Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Dial));

    /// <summary>The dial's name on its control.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Draft.NameOf(Id).ToString();
}
