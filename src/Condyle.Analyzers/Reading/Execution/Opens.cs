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
    /// <param name="type">Its type.</param>
    /// <param name="machine">Who asks.</param>
    /// <param name="canFork">Whether it comes from outside, so that it may be decided.</param>
    /// <param name="made">What it was made of.</param>
    public static object? Of(TypeKey? type, Machine machine, bool canFork = false, Derivation? made = null) => type switch
    {
        null => OpenValue.Any,
        { Shape: TypeShape.Void } => null,
        { Shape: TypeShape.String } => new TextValue(Condyle.Model.Text.Open, [], []) { Identity = new UnknownText(canFork && !machine.IsInTurn), Made = made },
        { Shape: TypeShape.Tuple } => new TupleValue([.. type.Arguments.Select(argument => Of(argument, machine, canFork))]),
        { Host: { } host } when Makers.TryGetValue(host, out var make) => make(machine.Draft),
        _ => new OpenValue(type, canFork && !machine.IsInTurn) { IsOfTurn = machine.IsInTurn, Made = made },
    };

    /// <summary>An unknown element of a type of Condyle; none when the type has no such thing.</summary>
    public static object? OfHost(Type host, RigDraft draft) => Makers.TryGetValue(host, out var make) ? make(draft) : null;
}
