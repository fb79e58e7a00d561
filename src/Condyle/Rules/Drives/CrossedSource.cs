using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A sentence by which a node on one side follows what is on the other, though its own side has that too.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Way">How the node follows.</param>
/// <param name="Follower">The node that follows.</param>
/// <param name="Side">The side that it is on.</param>
/// <param name="Source">What it follows.</param>
/// <param name="Meant">What is on its own side in place of that.</param>
internal sealed record CrossedSource(RigElement Sentence, FollowWay Way, RigNode Follower, Side Side, RigElement Source, RigElement Meant)
{
    /// <summary>The call that was given the source, and which of its arguments that is; none where that may not be changed.</summary>
    public (int Event, int Argument)? Given { get; init; }

    public PlaceId Place { get; init; }

    /// <summary>The call that was given the follower, where that may be what was mistaken, and the other side's, which would be right there.</summary>
    public (int Event, RigNode Meant)? Instead { get; init; }

    public string Message
    {
        get
        {
            var (source, meant) = (TitleOf(Source), TitleOf(Meant));
            return $"{Follower.Title} is on the {Side} side and {Way.Does} {source}, which is on the {Side.Opposite}, though there is {meant}: {Way.Moves} the other side, and {meant} {Way.Fails}. {Way.Advice(meant)}";
        }
    }

    public IReadOnlyList<Repair> Repairs
    {
        get
        {
            var repairs = new List<Repair>();
            if (Instead is var (said, other))
                repairs.Add(new TakeInstead(said, 0, other.Id, Way.Outcome(other.Title, TitleOf(Source))));
            if (Given is var (giving, argument) && Source is RigNode == Meant is RigNode)
                repairs.Add(new TakeInstead(giving, argument, Meant.Id, Way.Outcome(Follower.Title, TitleOf(Meant))));
            return repairs;
        }
    }

    /// <summary>A setting is told apart from others of its name by its control.</summary>
    private static string TitleOf(RigElement element) => element is RigSetting { Control: { } control } ? $"{element.Title} of {control.Title}" : element.Title;
}
