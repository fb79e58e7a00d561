using Condyle.Model;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Calls a member of Condyle on the real draft.</summary>
internal sealed class CondyleCall(string id, bool isInstance, int count, int[]? order, TypeKey? returns) : Instruction
{
    private readonly DraftMember? member = DraftMember.Find(id);

    /// <summary>The source of each argument, by its parameter; none for a default.</summary>
    public IReadOnlyList<TextSpan?> ArgumentSpans { get; set; } = [];

    /// <summary>The name in the source that picks the member: what another verb replaces.</summary>
    public TextSpan NameSpan { get; set; }

    /// <summary>Where the call's own parenthesis opens; its line is the one that the program knows.</summary>
    public TextSpan LineSpan { get; set; }

    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        var self = isInstance ? frame.Pop() : null;
        frame.Push(Call(machine, frame.Body.Path, self, arguments));
    }

    public object? Call(Machine machine, string path, object? self, object?[] arguments)
    {
        for (var i = 0; i < arguments.Length; i++)
            arguments[i] = machine.Decide(arguments[i]);
        // Code that doesn't compile yet may lack arguments, or give a value of another type.
        if (member is null || arguments.Length < member.Plain.Length)
            return Opens.Of(returns, machine);
        if (isInstance)
        {
            Fields.ThrowIfNull(self);
            if (!member.Called.DeclaringType!.IsInstanceOfType(self))
                self = OpenValue.Any;
            if (self is OpenValue)
                self = Opens.OfHost(member.Called.DeclaringType!, machine.Draft) ?? self;
            if (self is OpenValue)
                return Opens.Of(returns, machine, canFork: true);
        }

        if (member.Called.Name == "GetEnumerator" && EnumeratorCalls.Of(self, machine) is { } enumerator)
            return enumerator;
        if (!member.HasTwin && !member.TakesOpen && !(Marshal.IsKnown(self, machine) && AreKnown(arguments, machine)))
        {
            UnknownCode.Touch(machine, arguments.OfType<ObjectValue>(), new Origin(path, LineSpan), "Condyle");
            return Opens.Of(returns, machine, canFork: true);
        }

        var taken = member.Take(arguments, machine, member.TakesPlace ? machine.Places.Of(this, path) : null);
        var first = machine.Draft.Log.Count;
        var result = Invoke(machine, member, self, arguments, taken);
        var last = machine.Draft.Log.Count;
        for (var said = first; said < last; said++)
            machine.Budget.Make((machine.Draft.Log[said] as ChainDeclared)?.Joints?.Count ?? 1);
        if (last > first && self is IHandle of && Handles.IsOpen(of))
            machine.Lost.Say();
        if (member.IsRecipe && result is null)
        {
            foreach (var text in machine.Calls.TextsGivenTo(arguments))
                machine.Calls.Observe(text);
            machine.Lose(new Origin(path, LineSpan), "What a recipe is given here isn't known, so neither is what it builds");
            return Opens.Of(returns, machine);
        }

        // What a recipe says has no arguments of its own in the code.
        if (member.IsRecipe)
            machine.Calls.Add(new RecipeRecord(first, last, new CallRecord(this, path, arguments), result));
        else if (last > first)
            machine.Calls.Add(first, last, new CallRecord(this, path, arguments) { From = machine.CalledFrom });
        else if (self is not IHandle named)
            NoteOptions(machine, self, arguments, result);
        else if (result is TextValue name && Handles.IsMade(named))
            return machine.Calls.NameOf(named.Id, name.Text);
        return result;
    }

    protected override void Move(Relocation to)
    {
        ArgumentSpans = [.. ArgumentSpans.Select(span => span is { } given ? to.Of(given) : (TextSpan?)null)];
        (NameSpan, LineSpan) = (to.Of(NameSpan), to.Of(LineSpan));
    }

    // Options are asked what they say, or compared, by everything else than what makes them.
    private void NoteOptions(Machine machine, object? self, object?[] arguments, object? result)
    {
        var name = member!.Called.Name;
        if (self is not null && name.StartsWith("set_", StringComparison.Ordinal))
            machine.Calls.Give(self, name, arguments[arguments.Length - 1]);
        else if (name == "<Clone>$" && self is not null && result is not null)
            machine.Calls.GiveAll(result, self);
        else if (result is TextValue || !name.StartsWith("get_", StringComparison.Ordinal))
            LookAt(machine, self, arguments);
    }

    private static void LookAt(Machine machine, object? self, object?[] arguments)
    {
        machine.Calls.Observe(self);
        foreach (var given in arguments)
        {
            if (given is not TextValue)
                machine.Calls.Observe(given);
        }
    }

    // A program may have built another rig before that leaves a handle there: that is refused as well, for another reason.
    private static object? Invoke(Machine machine, DraftMember member, object? self, object?[] arguments, object?[] taken)
    {
        try
        {
            return member.Invoke(self, taken);
        }
        catch (ThrownByCode refused) when (machine.Unset.Count > 0 && arguments.Append(self).OfType<IHandle>().FirstOrDefault(handle => !Handles.IsMade(handle)) is { } unmade && machine.Unset.TryGetValue(unmade.GetType(), out var field))
        {
            throw new ThrownByCode(refused.Type, $"{refused.Message} This rig puts none into '{field}', and what another rig leaves there means nothing in this one.");
        }
    }

    private static bool AreKnown(object?[] arguments, Machine machine)
    {
        foreach (var argument in arguments)
        {
            if (!Marshal.IsKnown(argument, machine))
                return false;
        }

        return true;
    }
}
