using System.Collections;
using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Turns the interpreter's values into what Condyle's members take, and what they return back.</summary>
internal static class Marshal
{
    private static readonly Dictionary<Type, FactMaker> FactMakers = [];

    /// <summary>Whether a value is known whole, so that a member without a twin can be called with it.</summary>
    public static bool IsKnown(object? value, Machine machine) => value switch
    {
        // What the user's own object does when Condyle calls it back can't be known here.
        OpenValue or ObjectValue => false,
        TextValue text => !text.Text.IsOpen,
        IHandle handle => !Handles.IsMade(handle) || !machine.Draft.IsOpen(handle.Id),
        ArrayValue array => AreKnown(array.Items, machine),
        ListValue list => !list.IsOpen && AreKnown(list.List, machine),
        _ => true,
    };

    // An array may hold itself.
    private static bool AreKnown(IReadOnlyCollection<object?> items, Machine machine)
    {
        using var level = machine.Budget.Deeper(items.Count);
        return items.All(item => IsKnown(item, machine));
    }

    /// <summary>The argument that a member takes for a value.</summary>
    public static object? To(Type wanted, object? value, Machine machine)
    {
        if (wanted == typeof(Text))
            return value is TextValue text ? text.Text : value is null ? (Text)(string?)null : Text.Open;
        if (wanted.IsGenericType && wanted.GetGenericTypeDefinition() == typeof(Fact<>))
            return Maker(wanted).Make(value is OpenValue ? null : Plain(wanted.GetGenericArguments()[0], value, machine), value is OpenValue);
        return Plain(wanted, value, machine);
    }

    /// <summary>The interpreter's value for what a member returned.</summary>
    public static object? From(object? returned) => returned switch
    {
        string text => TextValue.Plain(text),
        Text text => new TextValue(text, [], []),
        Enum value => OfHost(value),
        _ when returned?.GetType() is { } type && type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Fact<>) => Maker(type).Read(returned),
        IEnumerable items when returned.GetType().Assembly != typeof(RigDraft).Assembly => new ArrayValue([.. items.Cast<object?>().Select(From)]),
        _ => returned,
    };

    private static EnumValue OfHost(Enum value)
    {
        var type = value.GetType();
        return new EnumValue(
            new TypeKey(type.FullName!.Replace('+', '.'), TypeShape.Enum) { Name = type.Name, Element = new TypeKey("int", TypeShape.Int32), Members = [.. Enum.GetNames(type).Select(name => new KeyValuePair<string, object>(name, Convert.ToInt32(Enum.Parse(type, name), System.Globalization.CultureInfo.InvariantCulture)))] },
            Convert.ToInt32(value, System.Globalization.CultureInfo.InvariantCulture));
    }

    private static object? Plain(Type wanted, object? value, Machine machine)
    {
        if (Nullable.GetUnderlyingType(wanted) is { } underlying)
            return value is null ? null : Plain(underlying, value, machine);
        if (wanted == typeof(string))
            return value is TextValue text && text.TryKnown(out var plain) ? plain : null;
        if (wanted.IsEnum)
            return value is EnumValue known ? Enum.ToObject(wanted, known.Number) : Activator.CreateInstance(wanted);
        if (wanted.IsArray)
        {
            var items = Sequences.ListOf(value, machine)?.ToArray() ?? [];
            var array = Array.CreateInstance(wanted.GetElementType()!, items.Length);
            for (var i = 0; i < items.Length; i++)
                array.SetValue(Plain(wanted.GetElementType()!, items[i], machine), i);
            return array;
        }

        if (value is null or OpenValue || !wanted.IsInstanceOfType(value))
            return Opens.OfHost(wanted, machine.Draft) ?? (wanted.IsValueType ? Activator.CreateInstance(wanted) : null);
        return value;
    }

    private static FactMaker Maker(Type fact)
    {
        lock (FactMakers)
        {
            if (!FactMakers.TryGetValue(fact, out var maker))
                FactMakers[fact] = maker = (FactMaker)Activator.CreateInstance(typeof(FactMaker<>).MakeGenericType(fact.GetGenericArguments()))!;
            return maker;
        }
    }

    private abstract class FactMaker
    {
        public abstract object Make(object? value, bool isOpen);

        public abstract object? Read(object fact);
    }

    private sealed class FactMaker<T> : FactMaker
    {
        public override object Make(object? value, bool isOpen) => isOpen ? Fact<T>.Open : (Fact<T>)(T)value!;

        public override object? Read(object fact) => ((Fact<T>)fact).TryKnown(out var value) ? From(value) : OpenValue.Any;
    }
}
