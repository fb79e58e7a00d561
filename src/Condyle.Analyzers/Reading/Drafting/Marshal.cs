using System.Collections;
using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Turns the interpreter's values into what Condyle's members take, and what they return back.</summary>
internal static class Marshal
{
    /// <summary>Whether a value is known whole, so that a member without a twin can be called with it.</summary>
    public static bool IsKnown(object? value, Machine machine) => value switch
    {
        // What the user's own object does when Condyle calls it back can't be known here.
        OpenValue or OpenSequence or ObjectValue => false,
        TextValue text => !text.Text.IsOpen,
        IHandle handle => !Handles.IsOpen(handle),
        ArrayValue array => AreKnown(array.Items, machine),
        CollectionValue { IsOpen: true } => false,
        ListValue list => AreKnown(list.List, machine),
        _ => true,
    };

    // An array may hold itself.
    private static bool AreKnown(IReadOnlyCollection<object?> items, Machine machine)
    {
        using var level = machine.Budget.Deeper(items.Count);
        return items.All(item => IsKnown(item, machine));
    }

    /// <summary>Makes what a parameter of a type takes of a value. Which way is worked out once, since members are called very often.</summary>
    public static Func<object?, Machine, object?> To(Type wanted) =>
        wanted == typeof(Text) ? static (value, _) => TextOf(value)
        : wanted == typeof(Fact<Text[]>) ? static (value, machine) => TextsOf(value, machine)
        : IsFact(wanted) ? FactMaker.Of(wanted).Make(Plain(wanted.GetGenericArguments()[0]))
        : Plain(wanted);

    /// <summary>Makes the interpreter's value of what a member returns.</summary>
    public static Func<object?, object?> From(Type returned) =>
        returned == typeof(string) ? static value => value is string text ? TextValue.Plain(text) : null
        : returned == typeof(Text) ? static value => new TextValue((Text)value!, [], [])
        : returned.IsEnum ? FromEnum(returned)
        : IsFact(returned) ? FactMaker.Of(returned).Read(From(returned.GetGenericArguments()[0]))
        : typeof(IEnumerable).IsAssignableFrom(returned) && returned.Assembly != typeof(RigDraft).Assembly ? FromItems(returned)
        : static value => value;

    private static Text TextOf(object? value) => value is TextValue text ? text.Text : value is null ? throw new ThrownByCode("System.ArgumentNullException", Text.NoText) : Text.Open;

    private static Fact<Text[]> TextsOf(object? value, Machine machine) =>
        value is not (null or OpenValue) && Sequences.ListOf(value, machine) is { } items ? items.Select(TextOf).ToArray() : Fact<Text[]>.Open;

    private static Func<object?, object?> FromItems(Type items)
    {
        var item = From(items.IsArray ? items.GetElementType()! : items.GetGenericArguments() is [var only] ? only : typeof(object));
        return value => value is IEnumerable all ? new ArrayValue([.. all.Cast<object?>().Select(item)]) : null;
    }

    private static Func<object?, object?> FromEnum(Type type)
    {
        var key = new TypeKey(type.FullName!.Replace('+', '.'), TypeShape.Enum)
        {
            Name = type.Name,
            Element = new TypeKey("int", TypeShape.Int32),
            Members = [.. Enum.GetNames(type).Select(name => new KeyValuePair<string, object>(name, NumberOf(Enum.Parse(type, name))))],
        };
        return value => new EnumValue(key, NumberOf(value!));
    }

    private static object NumberOf(object member) => Convert.ToInt32(member, System.Globalization.CultureInfo.InvariantCulture);

    private static Func<object?, Machine, object?> Plain(Type wanted)
    {
        if (Nullable.GetUnderlyingType(wanted) is { } underlying)
        {
            var plain = Plain(underlying);
            return (value, machine) => value is null ? null : plain(value, machine);
        }

        if (wanted == typeof(string))
            return static (value, _) => value is TextValue text && text.TryKnown(out var plain) ? plain : null;
        if (wanted.IsEnum)
            return (value, _) => value is EnumValue known ? Enum.ToObject(wanted, known.Number) : Activator.CreateInstance(wanted);
        if (wanted.IsArray)
            return PlainArray(wanted.GetElementType()!);
        return (value, machine) => value is null && !wanted.IsValueType ? null
            : value is null or OpenValue || !wanted.IsInstanceOfType(value) ? Opens.OfHost(wanted, machine.Draft) ?? (wanted.IsValueType ? Activator.CreateInstance(wanted) : null)
            : value;
    }

    private static Func<object?, Machine, object?> PlainArray(Type item)
    {
        var plain = Plain(item);
        return (value, machine) =>
        {
            if (Sequences.ListOf(value, machine)?.ToArray() is not { } items)
                return null;
            var array = Array.CreateInstance(item, items.Length);
            for (var i = 0; i < items.Length; i++)
                array.SetValue(plain(items[i], machine), i);
            return array;
        };
    }

    private static bool IsFact(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Fact<>);

    private abstract class FactMaker
    {
        public static FactMaker Of(Type fact) => (FactMaker)Activator.CreateInstance(typeof(FactMaker<>).MakeGenericType(fact.GetGenericArguments()))!;

        public abstract Func<object?, Machine, object?> Make(Func<object?, Machine, object?> plain);

        public abstract Func<object?, object?> Read(Func<object?, object?> from);
    }

    private sealed class FactMaker<T> : FactMaker
    {
        public override Func<object?, Machine, object?> Make(Func<object?, Machine, object?> plain) =>
            (value, machine) => value is OpenValue ? Fact<T>.Open : (Fact<T>)(T)plain(value, machine)!;

        public override Func<object?, object?> Read(Func<object?, object?> from) =>
            fact => ((Fact<T>)fact!).TryKnown(out var value) ? from(value) : OpenValue.Any;
    }
}
