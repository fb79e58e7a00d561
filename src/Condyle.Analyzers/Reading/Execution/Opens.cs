using System.Reflection;

namespace Condyle.Analyzers.Reading;

/// <summary>Makes unknown values: an unknown text, an unknown element of the rig, an unknown anything.</summary>
internal static class Opens
{
    private static readonly Dictionary<Type, Func<RigDraft, object?>> Makers = typeof(RigDraft).GetTypeInfo().Assembly.GetTypes()
        .Select(type => (type, method: type.GetMethod("Open", BindingFlags.Static | BindingFlags.NonPublic, null, [typeof(RigDraft)], null)))
        .Where(pair => pair.method is not null)
        .ToDictionary(pair => pair.type, pair => (Func<RigDraft, object?>)(draft => pair.method!.Invoke(null, [draft])));

    /// <summary>An unknown value of a type. What comes about in a turn of a loop that stands for all of them may be another one each time: it can't be decided.</summary>
    public static object? Of(TypeKey? type, Machine machine, bool canFork = false) => type switch
    {
        null => OpenValue.Any,
        { Shape: TypeShape.Void } => null,
        { Shape: TypeShape.String } => canFork && !machine.IsInTurn ? new TextValue(Condyle.Model.Text.Open, [], []) { Identity = new object() } : TextValue.Open,
        { Shape: TypeShape.Tuple } => new TupleValue([.. type.Arguments.Select(argument => Of(argument, machine, canFork))]),
        { Host: { } host } when Makers.TryGetValue(host, out var make) => make(machine.Draft),
        _ => new OpenValue(type, canFork && !machine.IsInTurn) { IsOfTurn = machine.IsInTurn },
    };

    /// <summary>An unknown element of a type of Condyle; none when the type has no such thing.</summary>
    public static object? OfHost(Type host, RigDraft draft) => Makers.TryGetValue(host, out var make) ? make(draft) : null;
}
