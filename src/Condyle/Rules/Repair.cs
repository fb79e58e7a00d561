namespace Condyle.Rules;

/// <summary>A change to rig code that repairs a finding, in terms of the sentences that the code said. <paramref name="Title"/> says the outcome.</summary>
/// <param name="Event">The number of the event whose call is to be changed.</param>
/// <param name="Title">What the rig will be like afterwards.</param>
internal abstract record Repair(int Event, string Title);

/// <summary>Append to the text that a call was given.</summary>
internal sealed record AppendText(int Event, int Argument, string Suffix, string Title) : Repair(Event, Title);

/// <summary>Turn the weight that a call was given into its inverse.</summary>
internal sealed record InvertWeight(int Event, int Argument, string Title) : Repair(Event, Title);

/// <summary>Give a call the inverse of the weight that another call was given.</summary>
internal sealed record InverseOf(int Event, int Argument, int OtherEvent, int OtherArgument, string Title) : Repair(Event, Title);

/// <summary>Say the same sentence with another verb.</summary>
internal sealed record CallInstead(int Event, string Method, string Title) : Repair(Event, Title);

/// <summary>Give a call another text. It is the rig's, so only a text that is written in the call itself is replaced.</summary>
internal sealed record ReplaceText(int Event, int Argument, string To, string Title) : Repair(Event, Title);

/// <summary>Give a call two of its arguments the other way round.</summary>
internal sealed record SwapArguments(int Event, int Argument, int OtherArgument, string Title) : Repair(Event, Title);

/// <summary>Go on with the sentence: a further call behind the one that was made.</summary>
internal sealed record GoOn(int Event, string Call, string Title) : Repair(Event, Title);

/// <summary>Leave a call out of its sentence.</summary>
internal sealed record LeaveOut(int Event, string Title) : Repair(Event, Title);

/// <summary>Give a call another number, where it is written in the call itself.</summary>
internal sealed record ReplaceNumber(int Event, int Argument, int To, string Title) : Repair(Event, Title);

/// <summary>Ask the copy that a call takes a joint of for another joint: the one that the other call was given.</summary>
internal sealed record CopyOfTarget(int Event, int Argument, int OtherEvent, int OtherArgument, string Title) : Repair(Event, Title);
