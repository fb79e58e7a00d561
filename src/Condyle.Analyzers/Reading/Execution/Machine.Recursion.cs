namespace Condyle.Analyzers.Reading;

/// <summary>
/// Functions that call themselves to a depth that isn't known. The first calls are read one by one; what all further ones do is read once, as a loop of
/// unknown length is: what one hands to the next stays known only where it is the same each time, and what any of them writes may have changed wherever
/// one of them calls the next.
/// </summary>
internal sealed partial class Machine
{
    private const int FramesAskedInAStep = 16;

    private readonly List<Descent> descents = [];

    /// <summary>Calls a function from the running one, which is handed its result.</summary>
    /// <param name="callee">The function with its arguments.</param>
    /// <param name="returns">The type of its result.</param>
    /// <param name="pushesResult">Whether the caller takes its result.</param>
    public void BeginCall(Frame callee, TypeKey? returns, bool pushesResult = true)
    {
        if (DescentInto(callee.Body) is { } around)
            GoOnDown(around, callee);
        else if (Draft.Log.Scope != 0 && GoesDownForAnUnknownTime(callee.Body))
            Descend(callee);
        else
        {
            Begin(callee, pushesResult);
            return;
        }

        if (pushesResult)
            top!.Push(callee.Body.ReturnsThis ? callee.This : Opens.Of(returns, this));
    }

    private Descent? DescentInto(CodeBody body)
    {
        foreach (var descent in descents)
        {
            if (ReferenceEquals(descent.Body, body))
                return descent;
        }

        return null;
    }

    /// <summary>Whether so many calls of a function are running, none of which is sure to happen, that there may be any number of them.</summary>
    private bool GoesDownForAnUnknownTime(CodeBody body)
    {
        var (calls, isSure, asked) = (0, true, 0);
        for (var frame = top; frame is not null && calls < Limits.UnknownCalls; frame = frame.Caller)
        {
            budget.Spend(++asked % FramesAskedInAStep == 0 ? 1 : 0);
            isSure &= frame is { IsHeld: false, Uncertain: null };
            if (!ReferenceEquals(frame.Body, body))
                continue;
            if (isSure)
                return false;
            calls++;
            isSure = true;
        }

        return calls == Limits.UnknownCalls;
    }

    private void Descend(Frame callee)
    {
        var descent = new Descent(callee);
        var shared = Journal.PlacesOf(Reach.From(Roots, budget));
        descents.Add(descent);
        do
        {
            descent.IsWider = false;
            AnyNumberOfTimes(() =>
            {
                var mark = Journal.Mark();
                try
                {
                    Lost.Add(RunToEnd(descent.Next()));
                }
                finally
                {
                    descent.Written.AddRange(Journal.Since(mark).Where(entry => entry.LiesIn(shared) && !entry.HoldsTheSameNow()));
                    Journal.Release();
                }
            });
        }
        while (descent.IsWider);
        descents.Remove(descent);
    }

    // The calls below do what this one does: it is enough that they may have done it.
    private void GoOnDown(Descent descent, Frame callee)
    {
        descent.Widen(callee, Lost);
        foreach (var entry in descent.Written.ToList())
            entry.Open(this);
    }

    /// <summary>All calls of a function below some depth.</summary>
    private sealed class Descent(Frame first)
    {
        private readonly object?[] arguments = [.. Enumerable.Range(0, first.Body.ParameterCount).Select(slot => ArgumentOf(first, slot))];
        private object? self = first.This;

        public CodeBody Body => first.Body;

        /// <summary>Whether what one call hands to the next turned out to be less sure.</summary>
        public bool IsWider { get; set; }

        /// <summary>What the calls write.</summary>
        public List<Journal.Entry> Written { get; } = [];

        public Frame Next()
        {
            var frame = new Frame(Body, self) { TypeArguments = first.TypeArguments, Waiting = first.Waiting };
            for (var slot = 0; slot < frame.Slots.Length; slot++)
            {
                if (slot < arguments.Length)
                    Put(frame, slot, arguments[slot]);
                else if (!Body.CapturedSlots.Contains(slot))
                    frame.Slots[slot] = first.Slots[slot];
            }

            return frame;
        }

        public void Widen(Frame next, LostReferences lost)
        {
            for (var slot = 0; slot < arguments.Length; slot++)
                arguments[slot] = Either(arguments[slot], ArgumentOf(next, slot), lost);
            self = Either(self, next.This, lost);
        }

        private object? Either(object? before, object? now, LostReferences lost)
        {
            if (ReferenceEquals(before, OpenValue.Any) || KnownEquality.Same.Equals(before, now))
                return before;
            lost.Add(before);
            lost.Add(now);
            IsWider = true;
            return OpenValue.Any;
        }

        private static object? ArgumentOf(Frame frame, int slot) => frame.Body.CapturedSlots.Contains(slot) && frame.Slots[slot] is object?[] cell ? cell[0] : frame.Slots[slot];

        private static void Put(Frame frame, int slot, object? value)
        {
            if (frame.Body.CapturedSlots.Contains(slot) && frame.Slots[slot] is object?[] cell)
                cell[0] = value;
            else
                frame.Slots[slot] = value;
        }
    }
}
