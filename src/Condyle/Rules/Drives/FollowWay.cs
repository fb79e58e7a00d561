namespace Condyle.Rules;

/// <summary>How a node follows another, in the words of the messages.</summary>
/// <param name="does">What it does with the other.</param>
/// <param name="moves">What happens to it, up to the words <c>the other side</c>.</param>
/// <param name="fails">What its own side's doesn't do.</param>
/// <param name="advise">What to do, with <c>{0}</c> for the one to follow.</param>
/// <param name="outcome">What the rig is like then, with <c>{0}</c> for the node and <c>{1}</c> for the one that it follows.</param>
internal sealed class FollowWay(string does, string moves, string fails, string advise, string outcome)
{
    public static FollowWay Driven { get; } = new("follows", "it moves when an animator poses", "doesn't move it", "Drive it by {0}.", "Drive {0} by {1}");

    public static FollowWay Aimed { get; } = new("aims at", "it turns when an animator poses", "doesn't turn it", "Aim it at {0}.", "Aim {0} at {1}");

    public static FollowWay Rolled { get; } = new("takes its roll from", "it rolls when an animator poses", "doesn't roll it", "Let {0} set its roll.", "Let {1} set the roll of {0}");

    public static FollowWay Twisted { get; } = new("shares the roll of", "it twists when an animator turns", "doesn't twist it as it should", "Twist it by {0}.", "Twist {0} by {1}");

    public static FollowWay Reaching { get; } = new("reaches for", "its limb is drawn across to", "doesn't move it", "Let it reach for {0}.", "Let {0} reach for {1}");

    public static FollowWay Facing { get; } = new("bends towards", "its bend turns when an animator poses", "doesn't turn it", "Let it face {0}.", "Let {0} face {1}");

    public static FollowWay Curved { get; } = new("is laid along a curve through", "it bends when an animator poses", "doesn't bend it", "Lead the curve through {0}.", "Lead the curve of {0} through {1}");

    public static FollowWay Sharing { get; } = new("shares the turn of", "it turns when an animator poses", "doesn't turn it", "Let it share that of {0}.", "Let {0} share the turn of {1}");

    public static FollowWay Responding { get; } = new("goes by", "it moves when an animator poses", "doesn't move it", "Let it go by {0}.", "Let {0} go by {1}");

    public string Does => does;

    public string Moves => moves;

    public string Fails => fails;

    public string Advice(string meant) => advise.Replace("{0}", meant);

    public string Outcome(string follower, string meant) => outcome.Replace("{0}", follower).Replace("{1}", meant);
}
