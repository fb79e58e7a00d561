using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Calls a member of Condyle on the real draft.</summary>
internal sealed class CondyleCall(string id, bool isInstance, int count, int[]? order, TypeKey? returns) : Instruction
{
    private readonly DraftMember? member = DraftMember.Find(id);

    /// <summary>The source of each argument, by its parameter; none for a default.</summary>
    public IReadOnlyList<TextSpan?> ArgumentSpans { get; init; } = [];

    /// <summary>The name in the source that picks the member: what another verb replaces.</summary>
    public TextSpan NameSpan { get; init; }

    /// <summary>Where the call's own parenthesis opens; its line is the one that the program knows.</summary>
    public TextSpan LineSpan { get; init; }

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

        if (!member.HasTwin && !member.TakesOpen && !((self is null || Marshal.IsKnown(self, machine)) && arguments.All(argument => Marshal.IsKnown(argument, machine))))
        {
            UnknownCode.Touch(machine, arguments.OfType<ObjectValue>(), new Origin(path, LineSpan), "Condyle");
            return Opens.Of(returns, machine, canFork: true);
        }

        var given = new object?[member.Plain.Length + (member.TakesPlace ? 1 : 0)];
        for (var i = 0; i < member.Plain.Length; i++)
            given[i] = Marshal.To(member.TargetParameter(i), arguments[i], machine);
        if (member.TakesPlace)
            given[member.Plain.Length] = machine.Places.Of(this, path);
        var first = machine.Draft.Log.Count;
        var result = member.Invoke(self, given);
        var last = machine.Draft.Log.Count;
        if (last > first)
            machine.Calls.Add(first, last, new CallRecord(this, path, arguments));
        return Marshal.From(result);
    }
}
