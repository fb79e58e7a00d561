using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A change to rig code that repairs a finding, in terms of the sentences that the code said. <paramref name="Title"/> says the outcome.</summary>
/// <param name="Event">The number of the event whose call is to be changed.</param>
/// <param name="Title">What the rig will be like afterwards.</param>
internal abstract record Repair(int Event, string Title)
{
    /// <summary>Whether the finding stays where it is; else what is repaired is to blame, and the finding lies there.</summary>
    public bool LiesElsewhere { get; init; }
}

/// <summary>Append to the text that a call was given.</summary>
internal sealed record AppendText(int Event, int Argument, string Suffix, string Title) : Repair(Event, Title)
{
    /// <summary>What stands at the text's end in place of it, and goes.</summary>
    public string Instead { get; init; } = "";
}

/// <summary>Turn the weight that a call was given into its inverse.</summary>
internal sealed record InvertWeight(int Event, int Argument, string Title) : Repair(Event, Title);

/// <summary>Give a call the inverse of the weight that another call was given.</summary>
internal sealed record InverseOf(int Event, int Argument, int OtherEvent, int OtherArgument, string Title) : Repair(Event, Title);

/// <summary>Say the same sentence with another verb.</summary>
internal sealed record CallInstead(int Event, string Method, string Title) : Repair(Event, Title);

/// <summary>Give a call another text. It is the rig's, so only a text that is written in the call itself is replaced.</summary>
internal sealed record ReplaceText(int Event, int Argument, string To, string Title) : Repair(Event, Title)
{
    /// <summary>The text that it has: what a recipe puts together comes right by the text that it is given, changed as the whole is. Else nothing.</summary>
    public string From { get; init; } = "";

    /// <summary>Whether a node that is right as it is means what is to be replaced, so that it can't be called after the other text as well; none does where this isn't said.</summary>
    public Func<RigNode, bool> IsMeantBy { get; init; } = static _ => false;
}

/// <summary>Give a call two of its arguments the other way round.</summary>
internal sealed record SwapArguments(int Event, int Argument, int OtherArgument, string Title) : Repair(Event, Title);

/// <summary>Go on with the sentence: a further call behind the one that was made.</summary>
internal sealed record GoOn(int Event, string Call, string Title) : Repair(Event, Title)
{
    /// <summary>The nodes that go by it, so that no sentence may name them.</summary>
    public IReadOnlyCollection<int> Gone { get; init; } = [];
}

/// <summary>Leave a call out of its sentence.</summary>
internal sealed record LeaveOut(int Event, string Title) : Repair(Event, Title);

/// <summary>Give a call another number, where it is written in the call itself or left out of it.</summary>
internal sealed record ReplaceNumber(int Event, int Argument, float To, string Title) : Repair(Event, Title);

/// <summary>Ask the copy that a call takes a joint of for another joint: the one that the other call was given.</summary>
internal sealed record CopyOfTarget(int Event, int Argument, int OtherEvent, int OtherArgument, string Title) : Repair(Event, Title);

/// <summary>Place the node that a call made or placed where another call was told: at its argument, or at what <paramref name="Member"/> gives of that.</summary>
/// <param name="Event">The event that placed the node; the one that made it, where it wasn't placed.</param>
/// <param name="OtherEvent">The event that was given where.</param>
/// <param name="OtherArgument">Which of its arguments that is.</param>
/// <param name="Member">What is asked of it: <c>.Tip</c>; nothing where it is a node itself.</param>
/// <param name="IsPlaced">Whether the node was placed, elsewhere.</param>
/// <param name="Title">What the rig will be like afterwards.</param>
internal sealed record PlaceAt(int Event, int OtherEvent, int OtherArgument, string Member, bool IsPlaced, string Title) : Repair(Event, Title);

/// <summary>Give a call another element: the one that another event made.</summary>
internal sealed record TakeInstead(int Event, int Argument, int Meant, string Title) : Repair(Event, Title);

/// <summary>Say of a blend of one source that its node follows it.</summary>
/// <param name="Event">The event that gave the source.</param>
/// <param name="Begun">The event that began the blend.</param>
/// <param name="Title">What the rig will be like afterwards.</param>
internal sealed record DriveInstead(int Event, int Begun, string Title) : Repair(Event, Title);
