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
