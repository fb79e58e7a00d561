namespace Condyle.Analyzers.Reading;

/// <summary>How unknown conditions and loops of unknown length are read: every way is tried, and what they write differently is open afterwards.</summary>
internal sealed partial class Machine
{
    private readonly List<FunctionValue> handed = [];
    private int speculation;
    private int speculations;
    private int scopes;
    private int turns;

    /// <summary>Whether what is being read may not happen.</summary>
    public bool IsSpeculating => speculation > 0;

    /// <summary>Whether what is being read stands for any number of turns.</summary>
    public bool IsInTurn => turns > 0;

    /// <summary>Reads both ways that an unknown condition can go, up to where they meet again: the first of the stops, or a later one.</summary>
    public void Both(Frame frame, object? condition, int first, int second, JumpLabel[] stops)
    {
        BeginSpeculation();
        var newlySplit = Split(condition);
        var stack = frame.CopyStack();
        var outer = Draft.Log.Scope;
        var mark = Journal.Mark();
        var said = Draft.Log.Count;

        var a = Try(frame, first, stops, stack, assumed: (condition, true));
        var afterA = Journal.Since(mark).Select(entry => entry.Kept()).ToList();
        Journal.UndoTo(mark);
        var b = Try(frame, second, stops, stack, assumed: (condition, false));
        var fromB = Journal.Since(mark);
        Draft.Log.Scope = outer;
        speculation--;
        if (said == Draft.Log.Count)
            split.ExceptWith(newlySplit);

        if (a.End == End.Threw || b.End == End.Threw)
        {
            if (a.End == b.End)
            {
                Journal.Release();
                throw Either(a.Thrown!, b.Thrown!, frame.Caller);
            }

            if (IsThrown((a.Thrown ?? b.Thrown)!, frame.Caller))
            {
                Journal.UndoTo(mark);
                Calls.Cut(said, Draft.Log.Count);
                Draft.Log.CutTo(said);
                Assume(condition, a.End == End.Threw);
                GoOn(frame, new Way(End.Joined, a.End == End.Threw ? first : second, null, stack));
            }
            else
            {
                if (b.End == End.Threw)
                {
                    Journal.UndoTo(mark);
                    foreach (var entry in afterA)
                        PutBack(entry);
                }

                // On the other way there is no rig.
                Assume(condition, b.End == End.Threw);
                split.ExceptWith(newlySplit);
                Meet(frame, (a.End == End.Threw ? b : a).All);
            }

            Journal.Release();
            return;
        }

        foreach (var entry in afterA.Where(entry => !entry.HoldsTheSameNow()))
            Open(entry, condition);
        foreach (var entry in fromB.Where(entry => !afterA.Exists(other => IsSamePlace(entry, other)) && !entry.HoldsTheSameNow()))
            Open(entry, condition);
        if (a.End == End.Joined && b.End == End.Joined && a.Position == b.Position)
            a = b = a with { Stack = [.. a.Stack.Zip(b.Stack, (then, otherwise) => Merge(then, otherwise, condition))], Ahead = [.. a.Ahead, .. b.Ahead] };
        Meet(frame, ReferenceEquals(a, b) ? a.All : [.. a.All, .. b.All]);
        if (frame.Uncertain is not null && a.All.All(way => way.End == End.Returned) != b.All.All(way => way.End == End.Returned))
            Assume(condition, b.All.All(way => way.End == End.Returned));
        Journal.Release();
        DoubtAfterOpenItems(frame);
    }

    /// <summary>Reads a loop of unknown length once for all its turns; the stops begin with the loop's head and its exit.</summary>
    public void ManyTurns(Frame frame, int body, JumpLabel[] stops, Func<object?>? item = null)
    {
        var stack = frame.CopyStack();
        var turn = Turns(() => Try(frame, body, stops, stack, item));
        var exit = stops[1].Position;
        GoOn(frame, new Way(End.Joined, exit, null, stack));
        if (turn.Thrown is { } thrown && IsThrown(thrown, frame.Caller))
            throw thrown;
        foreach (var way in turn.All.Where(way => way.End == End.Returned || (way.End == End.Joined && way.Position != stops[0].Position && way.Position != exit)))
            BecomeUncertain(frame, way);
        DoubtAfterOpenItems(frame);
    }

    /// <summary>Runs a function that code was handed which isn't known. One that hands itself on isn't run again.</summary>
    /// <returns>Whether it was run.</returns>
    public bool RunHanded(FunctionValue function)
    {
        if (handed.Count == Limits.HandedOn || handed.Contains(function))
            return handed.Contains(function);
        handed.Add(function);
        try
        {
            AnyNumberOfTimes(() => function.Invoke(this, [.. Enumerable.Repeat<object?>(OpenValue.Any, function.Takes)]));
            return true;
        }
        finally
        {
            handed.Remove(function);
        }
    }

    /// <summary>Runs what may be done any number of times, none included, such as a function that is handed over with items that aren't known.</summary>
    public void AnyNumberOfTimes(Action once)
    {
        var running = top;
        var thrown = Turns(() =>
        {
            Draft.Log.Scope = ++scopes;
            try
            {
                once();
                return null;
            }
            catch (ThrownByCode thrown)
            {
                return thrown;
            }
            catch (AnswerIsOpen open)
            {
                Lose(Here, open.Message);
                return null;
            }
            finally
            {
                top = running;
            }
        });
        if (thrown is not null && IsThrown(thrown, running))
            throw thrown;
    }

    // The first turn only shows what a turn writes; what any turn writes is open afterwards.
    private T Turns<T>(Func<T> turn)
    {
        BeginSpeculation();
        var outer = Draft.Log.Scope;
        var mark = Journal.Mark();
        var said = Draft.Log.Count;
        var assumed = assumptions.Mark;
        turns++;
        turn();
        var written = Journal.Since(mark).Where(entry => !entry.HoldsTheSameNow()).ToList();
        foreach (var entry in written)
            entry.Lose(this);
        Journal.UndoTo(mark);
        Calls.Cut(said, Draft.Log.Count);
        Draft.Log.CutTo(said);
        assumptions.ForgetTo(assumed);
        foreach (var entry in written)
            entry.Open(this);

        var last = turn();
        assumptions.ForgetTo(assumed);
        turns--;
        foreach (var entry in Journal.Since(mark).Where(entry => !entry.HoldsTheSameNow()).ToList())
            entry.Open(this);
        Draft.Log.Scope = outer;
        speculation--;
        Journal.Release();
        return last;
    }

    private void BeginSpeculation()
    {
        if (++speculation > Limits.Speculation)
            throw new ReadingStopped($"more than {Limits.Speculation} unknown conditions lie inside each other");
        if (++speculations > Limits.Speculations)
            throw new ReadingStopped($"unknown conditions are met more than {Limits.Speculations} times");
    }

    private Way Try(Frame frame, int start, JumpLabel[] stops, object?[] stack, Func<object?>? item = null, (object? Condition, bool IsSo) assumed = default)
    {
        var before = assumptions.Mark;
        Assume(assumed.Condition, assumed.IsSo);
        frame.RestoreStack(stack);
        frame.Position = start;
        Draft.Log.Scope = ++scopes;
        var held = frame.IsHeld;
        var uncertain = frame.Uncertain;
        frame.Uncertain = null;
        frame.IsHeld = true;
        if (++nesting > Limits.Nesting)
            throw new ReadingStopped($"unknown conditions and calls lie inside each other more than {Limits.Nesting} deep");
        try
        {
            if (item is not null)
                frame.Push(item());
            Run(frame, stops);
            IReadOnlyList<Way> ahead = frame.Uncertain?.Rest ?? [];
            var result = frame.Result;
            Settle(frame);
            // A structure that the arm leaves behind was written in it, which is undone.
            return frame.IsDone
                ? new Way(End.Returned, -1, frame.Body.ReturnsThis ? result : ValueCopies.Of(result), stack) { Ahead = ahead }
                : new Way(End.Joined, frame.Position, null, [.. frame.CopyStack().Select((value, at) => at < stack.Length ? value : ValueCopies.Of(value))]) { Ahead = ahead };
        }
        catch (ThrownByCode thrown)
        {
            LastPlace = null;
            return new Way(End.Threw, -1, null, stack, thrown);
        }
        finally
        {
            nesting--;
            assumptions.ForgetTo(before);
            top = frame;
            frame.IsHeld = held;
            frame.IsDone = false;
            frame.Result = null;
            frame.Uncertain = uncertain;
        }
    }

    // Goes on from the nearest of several ways, unsure until those that are further on are reached.
    private void Meet(Frame frame, IEnumerable<Way> ways)
    {
        var returned = ways.Where(way => way.End == End.Returned).ToList();
        var joined = ways.Where(way => way.End == End.Joined).OrderBy(way => way.Position).ToList();
        if (joined.Count == 0)
        {
            GoOn(frame, returned[0] with { Result = returned.Skip(1).Aggregate(returned[0].Result, (result, way) => Merge(result, way.Result)) });
            return;
        }

        var near = joined[0];
        foreach (var other in joined.Skip(1).Where(other => other.Position == near.Position))
            near = near with { Stack = [.. near.Stack.Zip(other.Stack, (x, y) => Merge(x, y))] };
        GoOn(frame, near);
        foreach (var further in joined.Where(way => way.Position > near.Position).Concat(returned))
            BecomeUncertain(frame, further);
    }

    private void GoOn(Frame frame, Way way)
    {
        if (way.End == End.Returned)
        {
            Return(frame, way.Result);
            return;
        }

        frame.RestoreStack(way.Stack);
        frame.Position = way.Position;
    }

    private void DoubtAfterOpenItems(Frame frame)
    {
        if (frame is { HasOpenItems: true, Uncertain: null, IsDone: false })
            BecomeUncertain(frame, new Way(End.Returned, -1, null, []));
    }

    private void BecomeUncertain(Frame frame, Way ahead)
    {
        if (frame.Uncertain is null)
        {
            frame.Uncertain = new Uncertainty(Journal.Mark(), Draft.Log.Scope, assumptions.Mark);
            Draft.Log.Scope = ++scopes;
        }

        frame.Uncertain.Add(ahead);
    }

    // The ways that have gone on to where the frame is now: what they left on the stack may be something else.
    private void MeetAhead(Frame frame, Uncertainty uncertain)
    {
        while (uncertain.TakeAt(frame.Position) is { } way)
        {
            assumptions.ForgetTo(uncertain.AssumptionMark);
            frame.RestoreStack([.. frame.CopyStack().Zip(way.Stack, (x, y) => Merge(x, y))]);
            if (!uncertain.HasMore)
                Settle(frame);
        }
    }

    private void Settle(Frame frame)
    {
        if (frame.Uncertain is not { } uncertain)
            return;
        assumptions.ForgetTo(uncertain.AssumptionMark);
        foreach (var entry in Journal.Since(uncertain.JournalMark).Where(entry => !entry.HoldsTheSameNow()).ToList())
            entry.Open(this);
        Journal.Release();
        Draft.Log.Scope = uncertain.OuterScope;
        frame.Uncertain = null;
        if (!frame.Body.ReturnsThis)
            frame.Result = uncertain.Results.Aggregate(frame.Result, (result, other) => Merge(result, other));
    }

    // Where it isn't sure that this still runs, and it throws: a rig is only built by the ways that have already gone on.
    private bool GoesOnWithout(ThrownByCode thrown, Frame frame)
    {
        if (frame.Uncertain is not { } uncertain || uncertain.Ahead(frame.Position - 1) is not { } rest || IsThrown(thrown, frame))
            return false;
        Journal.UndoTo(uncertain.JournalMark);
        assumptions.ForgetTo(uncertain.AssumptionMark);
        top = frame;
        var way = rest.TakeNearest();
        while (way.End == End.Returned && rest.HasMore)
            way = way with { Result = Merge(way.Result, rest.TakeNearest().Result) };
        frame.Uncertain = rest.HasMore ? rest : null;
        if (frame.Uncertain is null)
        {
            Draft.Log.Scope = uncertain.OuterScope;
            Journal.Release();
        }

        GoOn(frame, way);
        return true;
    }

    private object? Merge(object? a, object? b, object? condition = null)
    {
        if (KnownEquality.Same.Equals(a, b))
            return a;
        if (Choose(condition, a, b) is { } either)
            return either;
        Lost.Add(a);
        Lost.Add(b);
        return OpenValue.Any;
    }

    // What it held before is that of the way on which the condition holds.
    private void Open(Journal.Entry entry, object? condition)
    {
        if (entry.Items is { } items && Choose(condition, entry.Before, items[entry.Index]) is { } either)
            Write(items, entry.Index, either);
        else
            entry.Open(this);
    }

    // The texts that a condition depends on, where none was before.
    private List<object> Split(object? condition) => [.. Derivation.SubjectsOf(condition).Where(subject => subject is UnknownText { CanFork: true } && split.Add(subject))];

    private static bool IsSamePlace(Journal.Entry a, Journal.Entry b) =>
        ReferenceEquals(a.Items, b.Items) && a.Index == b.Index && ReferenceEquals(a.Collection, b.Collection);

    private void PutBack(Journal.Entry entry)
    {
        if (entry.Items is not null)
        {
            Write(entry.Items, entry.Index, entry.Before);
        }
        else
        {
            Journal.Changing(entry.Collection!);
            entry.Collection!.Restore(entry.Snapshot!);
        }
    }
}
