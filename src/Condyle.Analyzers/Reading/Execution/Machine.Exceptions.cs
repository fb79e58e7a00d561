namespace Condyle.Analyzers.Reading;

/// <summary>
/// Where what is thrown goes. A program that ends with an exception builds no rig; so where it isn't known whether something is thrown, the way on which
/// it isn't is the one that counts, unless the exception would be caught: then there is a path for each.
/// </summary>
internal sealed partial class Machine
{
    private readonly Dictionary<OpenValue, bool> nulls = [];

    /// <summary>Calls code that isn't read, or a method with what it can't know: something may be thrown, which counts where it is caught.</summary>
    public void MayThrow(string what)
    {
        var types = CatchersFrom(top).Select(handler => handler.Catches?.Id ?? "System.Exception").Where(type => !Program.IsRead(type)).Distinct().ToList();
        if (types.Count > 0 && Take(types.Count + 1) is > 0 and var way)
            throw ThrownByCode.OfUnknownKind(types[way - 1], what);
    }

    /// <summary>Something is asked of a value that may be null: where that would be caught, there is a path for it.</summary>
    public void MayBeNull(object? value)
    {
        const string type = "System.NullReferenceException";
        if (value is not OpenValue { Type: null or { IsReference: true } } open || !CatchersFrom(top).Any(handler => handler.Catches is null || Program.IsException(type, handler.Catches.Id)))
            return;
        if (!nulls.TryGetValue(open, out var isNull))
            isNull = Take(2) == 1;
        // Of what isn't known at all, nothing says that it is the same the next time.
        if (open.Type is not null)
            nulls[open] = isNull;
        if (isNull)
            throw new ThrownByCode(type, "Something that is null was used.");
    }

    /// <summary>An exception object that isn't known is thrown: it is one of those that are caught, or none of them.</summary>
    public ThrownByCode UnknownThrown(string type)
    {
        var types = CatchersFrom(top).Select(handler => handler.Catches?.Id ?? "System.Exception").Distinct().ToList();
        var choices = types.Count + (types.Contains("System.Exception") ? 0 : 1);
        var way = choices > 1 ? Take(choices) : 0;
        return ThrownByCode.OfUnknownKind(way < types.Count ? types[way] : type, "");
    }

    // Whichever way it goes the code throws: where it matters which, there is a path for each.
    private ThrownByCode Either(ThrownByCode a, ThrownByCode b, Frame? from)
    {
        LastPlace = null;
        if (a.Type == b.Type)
            return new ThrownByCode(a.Type, "this code throws whichever way it goes", KnownEquality.Same.Equals(a.Value, b.Value) ? a.Value : OpenValue.Any);
        return CatchersFrom(from).Any() && Take(2) == 1 ? b : a;
    }

    // Whether on this path something is thrown that only some way through the code throws.
    private bool IsThrown(ThrownByCode thrown, Frame? from)
    {
        LastPlace = null;
        return CatchersFrom(from).Any(handler => Catches(handler, thrown)) && Take(2) == 1;
    }

    /// <summary>One of several things of which it isn't known which one is used: each is on a path of its own, as far as there may be so many.</summary>
    public T? OneOf<T>(IReadOnlyList<T> choices)
        where T : class
    {
        const int most = Limits.PathsThatThrow;
        if (choices.Count < 2)
            return choices.Count == 0 ? null : choices[0];
        if (choices.Count > most)
            decisions.LeftOut ??= (Whereabouts, $"it can come about in {choices.Count} ways, and {most} of them are read");
        return choices[Take(Math.Min(choices.Count, most))];
    }

    // Where there are too many ways already, the others are left out.
    private int Take(int choices)
    {
        if (decisions.Take(choices, Limits.PathsThatThrow) is >= 0 and var answer)
            return answer;
        decisions.LeftOut ??= (Whereabouts, "code inside a 'try' may fail in so many ways from here on that not all of them are read");
        return 0;
    }

    // From the inside out, up to what catches everything. Who lets the exception go on in the end doesn't matter: the program ends all the same.
    private static IEnumerable<Handler> CatchersFrom(Frame? from)
    {
        for (var frame = from; frame is not null; frame = frame.Caller)
        {
            foreach (var handler in frame.Body.Handlers)
            {
                if (handler.LetsGo || !handler.Covers(frame.Position - 1))
                    continue;
                yield return handler;
                if (handler.Catches is null)
                    yield break;
            }
        }
    }

    // Looks for a handler from the running function down to the frame that is being run; past it the exception goes on to whoever runs that.
    private void Unwind(ThrownByCode thrown, Frame bottom)
    {
        for (var frame = top; frame is not null; frame = frame.Caller)
        {
            if (GoesOnWithout(thrown, frame))
                return;
            if (Handle(thrown, frame) is { } target)
            {
                top = frame;
                frame.RestoreStack([thrown]);
                frame.Position = target;
                return;
            }

            if (ReferenceEquals(frame, bottom))
                break;
            Settle(frame);
            depth--;
        }

        top = bottom;
        bottom.IsDone = true;
        if (!bottom.IsHeld)
        {
            Settle(bottom);
            depth--;
        }

        throw thrown;
    }

    // Where in a frame an exception is handled.
    private int? Handle(ThrownByCode thrown, Frame frame)
    {
        var at = frame.Position - 1;
        foreach (var handler in frame.Body.Handlers)
        {
            if (handler.Covers(at) && Catches(handler, thrown))
                return handler.Target.Position;
        }

        return null;
    }

    private bool Catches(Handler handler, ThrownByCode thrown) =>
        handler.Catches is null || Program.IsException(thrown.Type, handler.Catches.Id);
}
