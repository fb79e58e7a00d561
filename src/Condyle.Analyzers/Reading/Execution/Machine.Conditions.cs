using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>What unknown values are on this path and in this arm: what a condition has said of one holds wherever it is asked about again.</summary>
internal sealed partial class Machine
{
    private static readonly TypeKey WholeNumber = new("int", TypeShape.Int32);

    private readonly Dictionary<OpenValue, object?> decided = [];
    private readonly Assumptions assumptions = new();

    // Texts on which code that is already read was split into arms: a path for what they are now could contradict it.
    private readonly HashSet<object> split = [];

    /// <summary>What an unknown value is on this path; the unknown itself where it can't be decided.</summary>
    public object? Decide(object? value) => value switch
    {
        TextValue { Text.IsOpen: true } text => Decide(text),
        OpenValue { NegationOf: { } negated } => Decide(negated) is bool known ? !known : value,
        OpenValue open => Decide(open),
        _ => value,
    };

    /// <summary>Whether two texts are the same; none where that isn't known and can't be decided.</summary>
    public bool? AreEqual(TextValue a, TextValue b) => PartlyKnown.AreEqual(a.Text, b.Text) ?? (IsSame(a, b) ? true : Comparison.OfTexts(a, b) is { } condition ? Answer(condition, mayFork: true) : null);

    /// <summary>Whether a value is null.</summary>
    public object IsMissing(object? value)
    {
        value = value is TextValue or OpenValue { Type.IsReference: true } ? Decide(value) : value;
        return value is OpenValue or TextValue { MayBeNull: true } ? MayBeMissing(value) : value is null;
    }

    private object MayBeMissing(object unknown) => Comparison.IsMissing(unknown) is not { } condition ? new OpenValue(OpenValue.Truth)
        : Answer(condition, mayFork: true) is { } known ? known
        : Comparison.Truth(condition, Derivation.Of([unknown], machine => machine.IsMissing(unknown)));

    private static bool IsSame(TextValue a, TextValue b) => a.Identity is { } identity && ReferenceEquals(identity, b.Identity);

    private object? Decide(TextValue text)
    {
        if (text.Identity is { } subject)
        {
            var known = assumptions.Of(subject);
            if (known.Text is { } whole)
                return TextValue.Plain(whole);
            if (text.MayBeNull && known.Extent.To < 0)
                return null;
            if (text.Text.KnownLength == 0 && known.Extent.And(text.MayBeNull ? Extent.MayBeMissing : Extent.There) is { From: 0, To: 0 })
                return TextValue.Plain("");
        }

        return MadeAgain(text.Made) is TextValue { Text.IsOpen: false } again ? again : text;
    }

    private object? Decide(OpenValue open)
    {
        // Of code that doesn't compile yet it may not be known what it is.
        if (open.Type is null)
            return open;
        if (decided.TryGetValue(open, out var before) && before is not OpenValue)
            return before;
        if (open.Type.Shape == TypeShape.Bool && Answer(open, mayFork: true) is { } truth)
            return truth;
        if (MadeAgain(open.Made) is { } again and not OpenValue)
            return again;
        if (open.Type.IsReference && ExtentOf(open).To < 0)
            return null;
        if (open.Type.Shape == TypeShape.Int32 && ExtentOf(open) is var extent && extent.From == extent.To)
            return (int)extent.From;
        if (!open.CanFork || before is not null)
            return open;
        var choices = open.Type.Choices;
        var answer = decisions.Take(choices.Count);
        return decided[open] = answer < 0 ? open : choices[answer];
    }

    private object? MadeAgain(Derivation? made)
    {
        if (made is null || !made.Subjects.Any(subject => assumptions.Has(subject) || (subject is OpenValue open && decided.ContainsKey(open))))
            return OpenValue.Any;
        budget.Spend();
        return made.Again(this);
    }

    private bool? Answer(OpenValue truth, bool mayFork) =>
        assumptions.Of(truth).Extent is { From: var from, To: var to } && from == to ? from == 1
        : truth.Says is { } condition ? Answer(condition, mayFork) : null;

    private bool? Answer(object? value, bool mayFork) => value switch
    {
        bool known => known,
        OpenValue { NegationOf: { } negated } => !Answer(negated, mayFork),
        OpenValue { Type.Shape: TypeShape.Bool } open => decided.TryGetValue(open, out var before) && before is bool known ? known : Answer(open, mayFork),
        _ => null,
    };

    private bool? Answer(Condition condition, bool mayFork)
    {
        switch (condition)
        {
            case Chosen chosen:
                if (Answer((object)chosen.If, mayFork) is { } holds)
                    return Answer(holds ? chosen.Then : chosen.Else, mayFork);
                // Either way it may be the same.
                return Answer(mayFork ? Decide(chosen.Then) : chosen.Then, mayFork: false) is { } then && Answer(chosen.Else, mayFork: false) == then ? then : null;
            case InRange(var subject, var extent):
                return ExtentOf(subject).LiesIn(extent) is { } lies ? lies
                    : mayFork && SplitsEmptyOnes(extent) && TakesFork(subject) is { } answer ? Settled(subject, answer, known => known.In(extent), known => Outside(subject, known, extent))
                    : null;
            case IsText(var subject, var text):
                var of = assumptions.Of(subject);
                return of.Text is { } whole ? whole == text
                    : of.IsNot.Contains(text) || Extent.Of(text.Length)!.Value.LiesIn(of.Extent) is not true ? false
                    : mayFork && TakesFork(subject) is { } same ? Settled(subject, same, known => known.Is(text), known => known.Not(text))
                    : null;
            default:
                return null;
        }
    }

    private Extent ExtentOf(object subject) => ExtentOf(subject, assumptions.Of(subject));

    // A text's number is never less than −1.
    private static Extent ExtentOf(object subject, Knowledge known) => known.Extent.And(subject is OpenValue open ? open.Extent : Extent.MayBeMissing);

    private static bool SplitsEmptyOnes(Extent extent) => extent.To is -1 or 0 || extent is { From: 0 or 1, To: > int.MaxValue };

    private bool? TakesFork(object subject) => subject is UnknownText { CanFork: true } && !split.Contains(subject)
        ? decisions.Take(2, Limits.PathsOfTexts) switch { 0 => true, 1 => false, _ => null }
        : null;

    private bool Settled(object subject, bool answer, Func<Knowledge, Knowledge> ifSo, Func<Knowledge, Knowledge> ifNot)
    {
        assumptions.Settle(subject, answer ? ifSo : ifNot);
        return answer;
    }

    private static Knowledge Outside(object subject, Knowledge known, Extent extent) => known with { Extent = ExtentOf(subject, known).Without(extent) };

    /// <summary>Takes an unknown condition for granted in the arm that is about to be read.</summary>
    private void Assume(object? condition, bool isSo)
    {
        if (condition is not OpenValue { Type.Shape: TypeShape.Bool } open)
            return;
        if (open.NegationOf is { } negated)
        {
            Assume(negated, !isSo);
            return;
        }

        var truth = isSo ? 1 : 0;
        assumptions.Assume(open, known => known.In(new(truth, truth)));
        switch (open.Says)
        {
            case InRange(var subject, var extent):
                assumptions.Assume(subject, known => isSo ? known.In(extent) : Outside(subject, known, extent));
                break;
            case IsText(var subject, var text):
                assumptions.Assume(subject, known => isSo ? known.Is(text) : known.Not(text));
                break;
            case Chosen chosen when Answer(chosen.Then, mayFork: false) is { } then && then != isSo:
                Assume(chosen.If, false);
                Assume(chosen.Else, isSo);
                break;
            case Chosen chosen when Answer(chosen.Else, mayFork: false) is { } otherwise && otherwise != isSo:
                Assume(chosen.If, true);
                Assume(chosen.Then, isSo);
                break;
        }
    }

    /// <summary>What is one thing where a condition holds and another where it doesn't; none where the two can't be followed.</summary>
    public object? Choose(object? condition, object? then, object? otherwise)
    {
        if (condition is not OpenValue { Type.Shape: TypeShape.Bool } open)
            return PartsOf(then, otherwise) is { } whole ? whole((x, y) => Merge(x, y)) : Either(then, otherwise, null);
        if ((then, otherwise) is (bool yes, bool no) && yes != no)
            return yes ? open : Arithmetic.Not(open);
        var made = Derivation.Of([open, then, otherwise], machine => machine.Answer(open, mayFork: false) is { } holds ? holds ? then : otherwise : OpenValue.Any);
        if (PartsOf(then, otherwise) is { } parts)
            return parts((x, y) => KnownEquality.Same.Equals(x, y) ? x : Merge(x, y, condition));
        return IsTruth(then) && IsTruth(otherwise)
            ? new OpenValue(OpenValue.Truth) { Says = made is null ? null : new Chosen(open, then, otherwise), Made = made, IsOfTurn = IsInTurn }
            : Either(then, otherwise, made);
    }

    // A structure or tuple is one part by part.
    private static Func<Func<object?, object?, object?>, object>? PartsOf(object? a, object? b) => (a, b) switch
    {
        (TupleValue { IsPair: false, IsObject: false } x, TupleValue { IsPair: false, IsObject: false } y) when x.Items.Length == y.Items.Length && x.TypeName == y.TypeName => merge => new TupleValue([.. x.Items.Zip(y.Items, merge)]),
        (ObjectValue { Type.IsStruct: true, Collection: null } x, ObjectValue y) when x.Type == y.Type && HaveSameArguments(x, y) => merge => new ObjectValue(x.Type, [.. x.Fields.Zip(y.Fields, merge)], x.TypeArguments),
        _ => null,
    };

    private static bool HaveSameArguments(ObjectValue a, ObjectValue b) => ReferenceEquals(a.TypeArguments, b.TypeArguments)
        || (a.TypeArguments is { } x && b.TypeArguments is { } y && x.Count == y.Count && x.All(pair => y.TryGetValue(pair.Key, out var other) && other.Equals(pair.Value)));

    // Of two texts the parts that they share are known, of two numbers what lies between them.
    private object? Either(object? a, object? b, Derivation? made)
    {
        if (TypeOfBoth(a, b) is { } type)
            return new OpenValue(type) { Extent = NumberIn(a).Over(NumberIn(b)), Made = made, IsOfTurn = IsInTurn };
        if ((a ?? b) is not TextValue one || (b ?? a) is not TextValue other)
            return null;
        return new TextValue(a is null || b is null ? Text.Open : PartlyKnown.Either(one.Text, other.Text), [], [])
        {
            IsThere = a is not null && b is not null && !one.MayBeNull && !other.MayBeNull,
            Identity = new UnknownText(canFork: !IsInTurn),
            Made = made,
        };
    }

    private static TypeKey? TypeOfBoth(object? a, object? b) => (a, b) switch
    {
        (EnumValue or OpenValue { Type.Shape: TypeShape.Enum }, EnumValue or OpenValue { Type.Shape: TypeShape.Enum }) => EnumOf(a) is { } type && type.Equals(EnumOf(b)) ? type : null,
        (int or OpenValue { Type.Shape: TypeShape.Int32 }, int or OpenValue { Type.Shape: TypeShape.Int32 }) => WholeNumber,
        (bool or OpenValue { Type.Shape: TypeShape.Bool }, bool or OpenValue { Type.Shape: TypeShape.Bool }) => OpenValue.Truth,
        _ => null,
    };

    private static TypeKey? EnumOf(object? value) => (value as EnumValue)?.Type ?? (value as OpenValue)?.Type;

    private static Extent NumberIn(object? value) => value is OpenValue open ? open.Extent : Comparison.NumberOf(value) ?? Extent.All;

    private static bool IsTruth(object? value) => value is bool or OpenValue { Type.Shape: TypeShape.Bool };
}
