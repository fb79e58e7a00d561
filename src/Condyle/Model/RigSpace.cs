namespace Condyle.Model;

/// <summary>The node that a control rides while an option is picked.</summary>
internal sealed record SpaceParent(int Event, PlaceId Place, RigOption? Option, RigNode? Node);

/// <summary>Lets a control ride one of several nodes, by a choice.</summary>
internal sealed class RigSpace : RigElement
{
    private readonly bool ownsChoice;

    /// <param name="ownsChoice">Whether the choice was made with the space, so that each parent adds an option to it.</param>
    public RigSpace(int id, RigEvent said, RigNode? control, RigChoice? choice, bool ownsChoice)
        : base(id, said)
    {
        (Control, Choice, this.ownsChoice) = (control, choice, ownsChoice);
        Carrier = new RigNode(id, said, NodeKind.Group, "space of " + (control?.Name ?? Text.Open));
    }

    public RigNode? Control { get; }

    public RigChoice? Choice { get; }

    /// <summary>What carries the control: the frame that is blended from its parents. It is no node of the rig.</summary>
    public RigNode Carrier { get; }

    public List<SpaceParent> Parents { get; } = [];

    public bool ParentsAreOpen { get; set; }

    public override string Title => $"the space of {Control?.Title ?? "a control"}";

    public override void Forget()
    {
        ParentsAreOpen = true;
        if (ownsChoice && Choice is not null)
            Choice.OptionsAreOpen = true;
    }
}
