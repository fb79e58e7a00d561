using Condyle.Analyzers.Reading;

namespace Condyle.Analyzers.Reporting;

/// <summary>Some of the times that a call is made: those to which calls of certain functions lead, in a certain turn of a loop around one of them.</summary>
internal sealed record CallWay
{
    /// <summary>Every time.</summary>
    public static CallWay Any { get; } = new();

    /// <summary>The calls of functions that lead to it; others may lead to those.</summary>
    public Route? Route { get; private init; }

    /// <summary>How many those are.</summary>
    public int Depth { get; private init; }

    /// <summary>The turn, from 0.</summary>
    public int Turn { get; private init; }

    /// <summary>How many turns the loop takes; 0 where each of them counts.</summary>
    public int Turns { get; private init; }

    /// <summary>How many of the calls lie within the loop.</summary>
    public int DepthOfLoop { get; private init; }

    /// <summary>All ways that tell the times apart by as many calls and by the turns of the same loop, without saying which.</summary>
    public CallWay Kind => this with { Route = null, Turn = 0 };

    /// <summary>Those times of it to which a further call leads.</summary>
    public CallWay Through(Origin site) => this with { Route = new(site, Route), Depth = Depth + 1 };

    /// <summary>Those in one turn of a loop around the outermost call.</summary>
    public CallWay InTurn(int turn, int turns) => this with { Turn = turn, Turns = turns, DepthOfLoop = Depth };

    /// <summary>The way of this kind by which a call was made; none where fewer functions were called.</summary>
    /// <param name="call">The call.</param>
    /// <param name="turnOf">The turn, by the calls within the loop and the function that the loop is in, as it ran.</param>
    public CallWay? Of(CallRecord call, Func<Route?, CallSite?, int> turnOf)
    {
        var (route, site, turn) = ((Route?)null, call.From, 0);
        for (var depth = 0; ; depth++)
        {
            if (Turns > 0 && depth == DepthOfLoop)
                turn = turnOf(route, site) % Turns;
            if (depth == Depth)
                return this with { Route = route, Turn = turn };
            if (site is null)
                return null;
            (route, site) = (new(site.At, route), site.From);
        }
    }
}

/// <summary>Calls of functions inside each other, the outermost one first.</summary>
internal sealed record Route(Origin Site, Route? Within);
