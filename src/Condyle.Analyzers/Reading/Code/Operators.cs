using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>A built-in operator on the two values on the stack.</summary>
internal sealed class BinaryOperator(BinaryOperatorKind kind, bool isChecked, TypeKey result) : Instruction
{
    /// <summary>Whether it is one of nullable values: with a null there is no result, and no comparison holds.</summary>
    public bool IsLifted { get; init; }

    /// <summary>Whether two references are compared, not what they refer to.</summary>
    public bool ComparesIdentity { get; init; }

    /// <summary>Whether a constant is matched: not a number matches itself, and an enum isn't its number.</summary>
    public bool IsPattern { get; init; }

    /// <summary>Whether what is compared are records, which may say themselves when two of them are equal.</summary>
    public bool AsksEquals { get; init; }

    public override void Run(Machine machine, Frame frame)
    {
        var right = machine.Decide(frame.Pop());
        var left = machine.Decide(frame.Pop());
        machine.Calls.Observe(left);
        machine.Calls.Observe(right);
        frame.Push(Of(left, right, machine) is { } known ? known : MakesNull(left, right) ? null : Unknown(left, right, frame.Resolve(result), machine));
    }

    private object? Unknown(object? left, object? right, TypeKey? type, Machine machine)
    {
        var made = Derivation.Of([left, right], later => Of(later.Decide(left), later.Decide(right), later) ?? OpenValue.Any);
        return type?.Shape == TypeShape.Bool && !IsLifted && Comparison.Of(kind, left, right, made) is { } truth ? machine.Decide(truth) : Opens.Of(type, machine, made: made);
    }

    private bool MakesNull(object? left, object? right) => left is not OpenValue && right is not OpenValue
        && ((IsLifted && (left is null || right is null)) || (kind == BinaryOperatorKind.Subtract && left is FunctionValue && right is FunctionValue));

    private object? Of(object? left, object? right, Machine machine)
    {
        if (left is FunctionValue || right is FunctionValue)
            return OfFunctions(left, right, machine);
        if (ComparesIdentity && left is ObjectValue && right is ObjectValue)
            return ReferenceEquals(left, right) == (kind == BinaryOperatorKind.Equals);
        if (IsPattern && (left, right) is (double.NaN, double.NaN) or (float.NaN, float.NaN))
            return true;
        if (IsPattern && left is not OpenValue && (left as EnumValue)?.Type.Id != (right as EnumValue)?.Type.Id)
            return false;
        if (AsksEquals && left is ObjectValue record && right is ObjectValue)
            return AreEqual(record, right, machine) is { } equal ? equal == (kind == BinaryOperatorKind.Equals) : null;
        if (IsLifted && (left is null || right is null) && kind is BinaryOperatorKind.LessThan or BinaryOperatorKind.LessThanOrEqual or BinaryOperatorKind.GreaterThan or BinaryOperatorKind.GreaterThanOrEqual)
            return left is OpenValue || right is OpenValue ? null : false;
        if (IsLifted && kind is BinaryOperatorKind.And or BinaryOperatorKind.Or && (left is null || right is null))
            return (left ?? right) is bool decided && decided == (kind == BinaryOperatorKind.Or) ? decided : null;
        if (left is TextValue a && right is TextValue b)
            return kind is BinaryOperatorKind.Equals or BinaryOperatorKind.NotEquals && machine.AreEqual(a, b) is { } same ? same == (kind == BinaryOperatorKind.Equals) : null;
        var known = Arithmetic.Binary(kind, EnumValue.NumberOf(left), EnumValue.NumberOf(right), isChecked);
        return known is not (null or bool) && Unwrapped(result) is { Shape: TypeShape.Enum } type ? new EnumValue(type, NumberConversions.Convert(known, type.Element!.Shape, isChecked)!) : known;
    }

    public static bool? AreEqual(ObjectValue left, object right, Machine machine)
    {
        if (machine.Program.EqualsOf(left.Type) is null && !(KnownEquality.IsKnown(left) && KnownEquality.IsKnown(right)))
            return null;
        try
        {
            return machine.Equality.Equals(left, right);
        }
        catch (AnswerIsOpen)
        {
            return null;
        }
    }

    private object? OfFunctions(object? left, object? right, Machine machine)
    {
        if (left is OpenValue || right is OpenValue)
        {
            machine.Lost.Add(left);
            machine.Lost.Add(right);
            return null;
        }

        return kind switch
        {
            BinaryOperatorKind.Add => FunctionValue.Combine(left as FunctionValue, right as FunctionValue),
            BinaryOperatorKind.Subtract => FunctionValue.Remove(left as FunctionValue, right as FunctionValue),
            BinaryOperatorKind.Equals => Equals(left, right),
            BinaryOperatorKind.NotEquals => !Equals(left, right),
            _ => null,
        };
    }

    private static TypeKey Unwrapped(TypeKey type) => type is { Shape: TypeShape.Nullable, Element: { } element } ? element : type;
}

/// <summary>Compares two tuples part by part, each as the operator of the parts' types does.</summary>
internal sealed class TupleEquality(BinaryOperatorKind kind) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var right = frame.Pop();
        var left = frame.Pop();
        machine.Calls.Observe(left);
        machine.Calls.Observe(right);
        frame.Push(Of(left, right, machine) is { } known ? known == (kind == BinaryOperatorKind.Equals) : new OpenValue(OpenValue.Truth));
    }

    private static bool? Of(object? left, object? right, Machine machine)
    {
        if (left is not TupleValue a || right is not TupleValue b || a.Items.Length != b.Items.Length)
            return Part(left, right, machine);
        using var level = machine.Budget.Deeper(a.Items.Length);
        bool? all = true;
        for (var i = 0; i < a.Items.Length; i++)
        {
            switch (Of(a.Items[i], b.Items[i], machine))
            {
                case false: return false;
                case null: all = null; break;
            }
        }

        return all;
    }

    private static bool? Part(object? left, object? right, Machine machine)
    {
        if (left is IConvertible && right is IConvertible && left.GetType() != right.GetType())
        {
            // The compiler has both sides converted to one type; of numbers that is the wider one.
            var common = left is decimal || right is decimal ? TypeShape.Decimal : left is float or double || right is float or double ? TypeShape.Double : TypeShape.Decimal;
            (left, right) = (NumberConversions.Convert(left, common, false), NumberConversions.Convert(right, common, false));
        }

        if (left is not ObjectValue own || right is not ObjectValue other)
            return Arithmetic.Binary(BinaryOperatorKind.Equals, left, right, false) as bool?;
        if (machine.Program.EqualityOf(own.Type) is { } body)
            return machine.Decide(machine.Call(body, null, [left, right])) as bool?;
        return machine.Program.IsRecord(own.Type) ? BinaryOperator.AreEqual(own, right, machine) : own.Type.ComparesByParts && !own.Type.IsStruct ? null : ReferenceEquals(own, other);
    }
}

internal sealed class UnaryOperator(UnaryOperatorKind kind, bool isChecked, TypeKey result) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var operand = machine.Decide(frame.Pop());
        var known = operand is null && result.Shape == TypeShape.Nullable ? null
            : Arithmetic.Unary(kind, EnumValue.NumberOf(operand), isChecked) ?? Opens.Of(frame.Resolve(result), machine, made: MadeOf(operand));
        frame.Push(operand is EnumValue own && known is not OpenValue ? new EnumValue(own.Type, NumberConversions.Convert(known!, own.Type.Element!.Shape, isChecked)!) : known);
    }

    // On its own, so that a known operand makes no room for what is captured.
    private Derivation? MadeOf(object? operand) =>
        Derivation.Of([operand], later => Arithmetic.Unary(kind, EnumValue.NumberOf(later.Decide(operand)), isChecked) ?? OpenValue.Any);
}

/// <summary>Converts the value on the stack to another primitive type or enum.</summary>
internal sealed class ConvertNumber(TypeKey to, bool isChecked) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        // A number that stands for an enum is known as soon as that is.
        frame.Push(Convert(value is OpenValue { Type.Shape: TypeShape.Enum } && to.Shape != TypeShape.Enum ? machine.Decide(value) : value, to, isChecked));
    }

    public static object? Convert(object? value, TypeKey to, bool isChecked)
    {
        if (to is { Shape: TypeShape.Nullable, Element: { } element })
            to = element;
        switch (value)
        {
            case null: return null;
            case OpenValue open: return open.Type?.Shape == to.Shape ? open : Unknown(open, to, isChecked);
        }

        var number = EnumValue.NumberOf(value);
        if (number is not IConvertible)
            return value;
        var shape = to is { Shape: TypeShape.Enum } ? to.Element!.Shape : to.Shape;
        if (NumberConversions.Convert(number, shape, isChecked) is not { } converted)
            return new OpenValue(to);
        return to.Shape == TypeShape.Enum ? new EnumValue(to, converted) : converted;
    }

    private static OpenValue Unknown(OpenValue open, TypeKey to, bool isChecked) =>
        new(to) { Made = Derivation.Of([open], machine => Convert(machine.Decide(open), to, isChecked)) };
}

/// <summary>Asks whether the value on the stack is of a type; null never is.</summary>
internal sealed class TypeTest(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (value is TextValue text)
            value = machine.Decide(text);
        var wanted = frame.Resolve(type)!;
        frame.Push(TypeTests.Is(value, wanted, machine) is { } known ? known
            // A text is of all its types unless it is missing.
            : value is TextValue ? Arithmetic.Unary(UnaryOperatorKind.Not, machine.IsMissing(value), false)
            : new OpenValue(OpenValue.Truth));
    }
}

/// <summary><c>as</c>, and casts between reference types: the value, or null, or an exception.</summary>
internal sealed class CastReference(TypeKey type, bool throws) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        var fits = value is null ? true : TypeTests.Is(value, frame.Resolve(type)!, machine);
        if (throws && value is OpenValue)
            machine.MayThrow("a cast may fail");
        if (fits is not false)
        {
            frame.Push(value);
            return;
        }

        if (throws)
            throw new ThrownByCode("System.InvalidCastException", $"A value that isn't a {type.Id} was cast to it.");
        frame.Push(null);
    }
}

internal static class TypeTests
{
    /// <summary>Whether a value is of a type; none when it can't be told.</summary>
    public static bool? Is(object? value, TypeKey type, Machine machine)
    {
        if (type.Shape == TypeShape.Nullable)
            type = type.Element!;
        return value switch
        {
            null => false,
            OpenValue => null,
            TextValue { MayBeNull: true } when type.Shape == TypeShape.String || type.Id is "object" => null,
            ObjectValue own => type.Id is "object" || machine.Program.IsOfType(own.Type.Id, type.Shape == TypeShape.User || type.Arguments.Count == 0 ? type.Id : type.Definition) && HasArguments(own, type, machine),
            _ when type.Id is "object" => true,
            TextValue => type.Shape == TypeShape.String ? true : type is { IsReference: true, Shape: TypeShape.Other } ? FrameworkTypes.Is(value, type, machine) : false,
            ArrayValue array when type.Shape == TypeShape.Array => IsArray(array, type),
            TupleValue tuple when type.Shape == TypeShape.Tuple => IsTuple(tuple, type, machine),
            ExceptionValue thrown => machine.Program.IsException(thrown.Type, type.Id),
            EnumValue own => type.Shape == TypeShape.Enum ? own.Type.Id == type.Id : type.Id is "System.Enum" or "System.ValueType" ? true : type is { IsReference: true, Shape: TypeShape.Other } ? FrameworkTypes.Is(value, type, machine) : false,
            _ when type.Host is { } host => host.IsInstanceOfType(value),
            _ when ShapeOf(value) is { } shape => type.Shape == TypeShape.Other ? FrameworkTypes.Is(value, type, machine) : shape == type.Shape,
            // What the framework made is none of the primitive or of the user's own types.
            _ => type.Shape is TypeShape.Other or TypeShape.Parameter || (type.Shape == ShapeOfMade(value)) ? FrameworkTypes.Is(value, type, machine) : false,
        };
    }

    private static TypeShape? ShapeOfMade(object? value) => value switch
    {
        IStretch => TypeShape.Array,
        TupleValue => TypeShape.Tuple,
        _ => null,
    };

    // Arrays of references may stand in for arrays of what their items derive from.
    private static bool? IsArray(ArrayValue array, TypeKey type)
    {
        if (type.Rank != array.Lengths.Length || array.Wrapping != Wrapping.None)
            return false;
        return array.ItemType is not { } item || type.Element is not { } wanted ? null
            : item.Equals(wanted) || (item.IsReference && wanted.Id == "object") ? true
            : item.IsReference && wanted.IsReference ? null
            : false;
    }

    private static bool? IsTuple(TupleValue tuple, TypeKey type, Machine machine)
    {
        if (tuple.Items.Length != type.Arguments.Count)
            return false;
        var all = tuple.Items.Select((item, index) => item is null ? null : Is(item, type.Arguments[index], machine)).ToList();
        return all.Contains(false) ? false : all.Contains(null) || type.Arguments.Any(argument => argument.IsReference && argument.Shape != TypeShape.String) ? null : true;
    }

    // A generic type is only the same with the same arguments.
    private static bool HasArguments(ObjectValue own, TypeKey type, Machine machine)
    {
        if (type.Arguments.Count == 0 || own.TypeArguments is null)
            return true;
        var parameters = machine.Program.ParametersOf(type.Definition);
        for (var i = 0; i < parameters.Count && i < type.Arguments.Count; i++)
        {
            if (own.TypeArguments.TryGetValue(parameters[i], out var known) && !known.Equals(type.Arguments[i]))
                return false;
        }

        return true;
    }

    public static TypeShape? ShapeOf(object? value) => value switch
    {
        bool => TypeShape.Bool,
        char => TypeShape.Char,
        int => TypeShape.Int32,
        long => TypeShape.Int64,
        float => TypeShape.Single,
        double => TypeShape.Double,
        uint => TypeShape.UInt32,
        ulong => TypeShape.UInt64,
        byte => TypeShape.Byte,
        sbyte => TypeShape.SByte,
        short => TypeShape.Int16,
        ushort => TypeShape.UInt16,
        decimal => TypeShape.Decimal,
        _ => null,
    };
}

/// <summary>Makes an <c>Index</c> from the end.</summary>
internal sealed class MakeIndex : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(Arithmetic.AsIndex(frame.Pop()) is { } value ? new IndexValue(value, FromEnd: true) : OpenValue.Any);
}

/// <summary>Makes a <c>Range</c> of its two ends.</summary>
internal sealed class MakeRange : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var end = frame.Pop();
        var start = frame.Pop();
        frame.Push(AsIndex(start) is { } from && AsIndex(end) is { } to ? new RangeValue(from, to) : OpenValue.Any);
    }

    private static IndexValue? AsIndex(object? value) => value as IndexValue ?? (Arithmetic.AsIndex(value) is { } index ? new IndexValue(index, false) : null);
}
