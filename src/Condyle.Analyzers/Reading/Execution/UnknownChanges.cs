namespace Condyle.Analyzers.Reading;

/// <summary>
/// What may have changed of objects that aren't known. Two of them may be the same one, so a member that was stored through one may be another's, and
/// code that isn't known may have changed all that it can get at. Code of the user's may hold anything; an object of the framework holds its own.
/// </summary>
internal sealed class UnknownChanges(Machine machine)
{
    private const string OfTheUsers = "";

    // In the store, so that a way that is only tried leaves nothing behind.
    private readonly Dictionary<string, object?[]> changed = [];

    /// <summary>Something was stored in a field.</summary>
    public void Store(string field) => Note(field);

    /// <summary>Code that isn't known was handed an object: as its receiver, or as an argument.</summary>
    public void Hand(object? value)
    {
        if (value is OpenValue { Type: not { Shape: TypeShape.Bool or TypeShape.Enum or TypeShape.Char or TypeShape.String or (>= TypeShape.SByte and <= TypeShape.Decimal) } } open)
            Note(KindOf(open));
    }

    public bool MayHaveChanged(OpenValue owner, string member) => IsNoted(member) || IsNoted(KindOf(owner));

    private string KindOf(OpenValue value) => value.Type is { Shape: TypeShape.Other } type && !machine.Program.IsRead(type.Definition) ? type.Id : OfTheUsers;

    private bool IsNoted(string what) => changed.TryGetValue(what, out var note) && note[0] is not null;

    private void Note(string what)
    {
        if (!changed.TryGetValue(what, out var note))
            changed[what] = note = [null];
        machine.Write(note, 0, true);
    }
}
