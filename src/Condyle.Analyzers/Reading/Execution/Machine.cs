using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Executes lowered code on known and open values, and calls the real draft for every call into Condyle.</summary>
/// <param name="subject">What is read: "the rig 'Gull'".</param>
/// <param name="program">The code.</param>
/// <param name="draft">What it is handed.</param>
/// <param name="decisions">Which way it goes.</param>
/// <param name="budget">How far it may go.</param>
internal sealed partial class Machine(string subject, Program program, RigDraft draft, Decisions decisions, Budget budget)
{
    private const int CallersTold = 8;

    private readonly Dictionary<(object Owner, string Member), object?> openMembers = [];
    private int depth;
    private int nesting;
    private Frame? top;
    private KnownEquality? equality;
    private readonly HashSet<Frame> suspended = [];
    private LostReferences? lost;
    private UnknownChanges? unknownChanges;

    public Program Program { get; } = program;

    public RigDraft Draft { get; } = draft;

    public Budget Budget => budget;

    public Journal Journal { get; } = new();

    /// <summary>When two values are equal; it asks the user's own types.</summary>
    public KnownEquality Equality => equality ??= new OwnEquality(this);

    public CallRecords Calls { get; } = new();

    public PlaceTable Places { get; } = new();

    /// <summary>The last stretch of source that was executed.</summary>
    public CodePlace? LastPlace { get; private set; }

    /// <summary>All that the code which is running can get at by itself.</summary>
    public IEnumerable<object?> Roots
    {
        get
        {
            foreach (var frame in suspended)
                yield return frame;
            for (var frame = top; frame is not null; frame = frame.Caller)
                yield return frame;
            foreach (var values in statics.Values)
                yield return values;
        }
    }

    /// <summary>What may have changed of objects that aren't known.</summary>
    public UnknownChanges Changes => unknownChanges ??= new UnknownChanges(this);

    /// <summary>What values that aren't known may stand for.</summary>
    public LostReferences Lost => lost ??= new LostReferences(this);

    /// <summary>The stretch of source that is being executed.</summary>
    public Origin Here => top is { } running ? PlaceIn(running) : new Origin("", default);

    /// <summary>Where the function was called that is running.</summary>
    public CallSite? CalledFrom => top?.Site;

    private CodePlace Whereabouts => new(Here, Callers);

    private List<Origin> Callers
    {
        get
        {
            var callers = new List<Origin>();
            for (var frame = top?.Caller; frame is not null && callers.Count < CallersTold; frame = frame.Caller)
            {
                if (PlaceIn(frame) is { Path.Length: > 0 } place && !callers.Contains(place))
                    callers.Add(place);
            }

            callers.Reverse();
            return callers;
        }
    }

    private static Origin PlaceIn(Frame frame) => frame.Position > 0 && frame.Position <= frame.Body.Code.Length
        ? new Origin(frame.Body.Path, frame.Body.Code[frame.Position - 1].Span)
        : new Origin("", default);

    /// <summary>Runs a function to its end and gives back its result: an iterator's items, an async function's task.</summary>
    public object? Call(CodeBody body, object? self, object?[] arguments, IReadOnlyDictionary<string, TypeKey>? typeArguments = null)
    {
        typeArguments ??= (self as ObjectValue)?.TypeArguments;
        return body.IsIterator ? IteratorOf(body, typeArguments, () => Enter(body, self, arguments, typeArguments))
            : Enter(body, self, arguments, typeArguments) is var frame && body.IsAsync ? RunAsync(frame)
            : RunToEnd(frame);
    }

    /// <summary>What an iterator hands out, which begins anew in a frame of its own each time that it is enumerated.</summary>
    public IteratorValue IteratorOf(CodeBody body, IReadOnlyDictionary<string, TypeKey>? typeArguments, Func<Frame> enter) =>
        new(() => Iterate(enter), body.Handlers.Count > 0) { TypeArguments = body.ItemType is { } item ? [typeArguments is null ? item : item.With(typeArguments)] : null };

    /// <summary>What a caller gets of an iterator: its items, or an enumerator that moves on through them once.</summary>
    public static object HandedOutBy(CodeBody body, IteratorValue items) => body.IsEnumerator ? new EnumeratorValue(items.GetEnumerator, runsCode: true) : items;

    /// <summary>A frame for a function, with its arguments in place.</summary>
    public Frame Enter(CodeBody body, object? self, object?[] arguments, IReadOnlyDictionary<string, TypeKey>? typeArguments = null)
    {
        budget.Spend(body.SlotCount / Frame.SlotsMadeInAStep);
        var frame = new Frame(body, self) { TypeArguments = typeArguments };
        // Code that doesn't compile yet may give more arguments than there are parameters.
        for (var i = 0; i < Math.Min(arguments.Length, body.ParameterCount); i++)
        {
            if (frame.Slots[i] is object?[] cell && body.CapturedSlots.Contains(i))
                cell[0] = arguments[i];
            else
                frame.Slots[i] = arguments[i];
        }

        return frame;
    }

    /// <summary>Begins a call from the running function; its result lands on that function's stack.</summary>
    public void Begin(Frame callee, bool pushesResult = true)
    {
        if (++depth > Limits.Depth)
            throw new ReadingStopped($"calls go more than {Limits.Depth} deep");
        callee.Caller = top;
        callee.Site = top is null ? null : new CallSite(PlaceIn(top), top.Site);
        if (callee.Site is { } site && top!.Body.Path != callee.Body.Path)
            Places.Enter(callee.Body.Path, site.At);
        callee.PushesResult = pushesResult;
        top = callee;
    }

    public void Return(Frame frame, object? result)
    {
        frame.Result = frame.Body.ReturnsThis ? frame.This : result;
        frame.IsDone = true;
        if (!frame.IsHeld)
            Leave(frame);
    }

    private void Leave(Frame frame)
    {
        Settle(frame);
        depth--;
        top = frame.Caller;
        if (frame.PushesResult && frame.Caller is { } caller)
            caller.Push(frame.Result);
    }

    /// <summary>Runs a frame that nobody waits for on a stack of the interpreter's own.</summary>
    public object? RunToEnd(Frame frame)
    {
        if (++nesting > Limits.Nesting)
            throw new ReadingStopped($"functions call each other through the framework more than {Limits.Nesting} deep");
        var saved = top;
        Begin(frame, pushesResult: false);
        try
        {
            Run(frame, []);
            return frame.Result;
        }
        finally
        {
            top = saved;
            nesting--;
        }
    }

    /// <summary>Hands out an item of an iterator.</summary>
    public void Yield(Frame frame, object? item)
    {
        if (frame.IsHeld || frame.HasOpenItems)
        {
            // Whether there is such an item isn't known, nor whether anybody asks for what comes after it.
            frame.HasOpenItems = true;
            return;
        }

        frame.Result = item;
        frame.HasYielded = true;
        frame.IsDone = true;
        depth--;
        top = frame.Caller;
    }

    /// <summary>Whether the reading was given up, so that nothing more may run.</summary>
    public bool HasStopped { get; private set; }

    /// <summary>The items of an iterator; each enumeration runs it anew. Who leaves it early still has its final parts run.</summary>
    public IEnumerable<object?> Iterate(Func<Frame> start)
    {
        var frame = start();
        if (Draft.Log.Scope != 0 && GoesDownForAnUnknownTime(frame.Body))
            throw new SequenceIsOpen("an iterator asks itself for items, to a depth that isn't known");
        suspended.Add(frame);
        try
        {
            while (true)
            {
                frame.IsDone = false;
                frame.HasYielded = false;
                RunToEnd(frame);
                if (frame.HasOpenItems)
                    throw new SequenceIsOpen("whether an iterator hands out an item depends on an unknown condition") { HasRun = true };
                if (!frame.HasYielded)
                    yield break;
                yield return frame.Result;
            }
        }
        finally
        {
            suspended.Remove(frame);
            if (frame.HasYielded && !HasStopped)
                Abandon(frame);
        }
    }

    private void Abandon(Frame frame)
    {
        frame.HasYielded = false;
        var left = new ThrownByCode("", "An iterator was left.");
        if (Handle(left, frame) is not { } target)
            return;
        frame.IsDone = false;
        frame.RestoreStack([left]);
        frame.Position = target;
        try
        {
            RunToEnd(frame);
        }
        catch (ThrownByCode thrown) when (ReferenceEquals(thrown, left))
        {
            // Its final parts have run; nobody waits for more.
        }
    }

    /// <summary>Runs until the frame is done, or until it is on top again at one of some positions.</summary>
    private void Run(Frame frame, JumpLabel[] stops)
    {
        while (!frame.IsDone)
        {
            try
            {
                while (!frame.IsDone)
                {
                    var running = top!;
                    if (running.Uncertain is { } uncertain)
                        MeetAhead(running, uncertain);
                    if (ReferenceEquals(running, frame) && IsAt(stops, running.Position))
                        return;
                    var instruction = running.Body.Code[running.Position++];
                    Count();
                    instruction.Run(this, running);
                }
            }
            catch (ThrownByCode thrown)
            {
                thrown.Place ??= Whereabouts;
                Unwind(thrown, frame);
            }
            catch (ReadingStopped)
            {
                HasStopped = true;
                NotePlace();
                throw;
            }
        }
    }

    private void NotePlace()
    {
        LastPlace ??= Whereabouts;
    }

    private static bool IsAt(JumpLabel[] stops, int position)
    {
        foreach (var stop in stops)
        {
            if (stop.Position == position)
                return true;
        }

        return false;
    }

    private void Count()
    {
        budget.Spend();
        if (Draft.Log.Count > Limits.Events)
            throw new ReadingStopped($"the rig says more than {Limits.Events} sentences");
    }

    /// <summary>Notes that a stretch of code wasn't read, and opens all that it could have changed.</summary>
    public void Lose(Origin at, string reason)
    {
        Miss(Draft, new CodePlace(at, Callers), reason);
        Draft.Record(new AllTouched());
    }

    /// <summary>Notes that there may be more to a rig than the model shows, or that there will be none.</summary>
    public void Miss(RigDraft of, CodePlace at, string reason, bool isFailure = false) =>
        of.Record(new Gap(new RigGap(subject, Places.At(at.At), reason) { IsFailure = isFailure, Callers = [.. at.Callers.Select(Places.At)] }));

    /// <summary>The same for a stretch of the code that is running.</summary>
    public void Miss(RigDraft of, Origin at, string reason) => Miss(of, new CodePlace(at, Callers), reason);

    /// <summary>Stores a value where another way through the code may have to find the old one.</summary>
    public void Write(object?[] items, int index, object? value)
    {
        Journal.Written(items, index);
        items[index] = value;
    }

    /// <summary>A member of something unknown: asked for twice it is the same unknown, as long as nothing can have changed it.</summary>
    public object? MemberOf(OpenValue owner, string member, TypeKey? type)
    {
        if (Changes.MayHaveChanged(owner, member))
            return Opens.Of(type, this);
        if (!openMembers.TryGetValue((owner, member), out var value))
            openMembers[(owner, member)] = value = Opens.Of(type, this, canFork: !owner.IsOfTurn && owner.Type is not { Shape: TypeShape.Other, IsReference: false });
        return value;
    }
}
