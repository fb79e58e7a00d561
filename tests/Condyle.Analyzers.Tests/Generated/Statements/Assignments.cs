namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Assignments of every form to variables, fields, properties and components.</summary>
internal sealed class Assignments : IStatements
{
    public int Weight => 10;

    public bool Fits(Author author) => Targets(author).Count > 0;

    public void Write(Author author)
    {
        var (target, type) = author.Choose.Of(Targets(author));
        var owner = target.Split('.')[0];
        if (target != owner && author.Scope.All.Any(variable => variable.Name == owner && variable.Type is { IsValue: false }) && author.Choose.Chance(25))
            author.Code.Line($"{owner}?{target[owner.Length..]} = {author.Stored(type)};");
        else
            author.Code.Line(Assign(target, type, author) + ";");
    }

    private static string Assign(string target, CodeType type, Author author)
    {
        var choose = author.Choose;
        if (choose.Chance(type is DeclaredType ? 20 : 45))
            return $"{target} = {author.Stored(type)}";
        return type switch
        {
            TextType => $"{target} = Trace.Short({target} + {author.Value(AnyType.Plain(author))})",
            TruthType => $"{target} {choose.Any("&=", "|=", "^=")} {author.Value(type)}",
            NumberType { Name: "char" } => target + choose.Any("++", "--"),
            NumberType { IsReal: true } => $"{target} {choose.Any("+=", "-=", "*=", "/=", "%=")} {author.Moving(type)}",
            NumberType => choose.Below(4) switch
            {
                0 => $"{target} {choose.Any("<<=", ">>=", ">>>=")} {author.Value(NumberType.Int)}",
                1 => choose.Any($"{target}++", $"--{target}", $"_ = {target}++"),
                _ => $"{target} {choose.Any("+=", "-=", "*=", "/=", "%=", "&=", "|=", "^=")} {author.Moving(type)}",
            },
            EnumType { IsFlags: true } => $"{target} {choose.Any("|=", "&=", "^=")} {author.Value(type)}",
            EnumType => target + choose.Any("++", "--"),
            MaybeType { Of: NumberType { Name: "int" or "long" } } => $"{target} {choose.Any("+=", "-=", "??=")} {author.Stored(type)}",
            // What changes where it lies must be a variable, not a property.
            DeclaredType { Grows: true } when !target.Contains('.') => choose.Any($"{target} += {author.Value(NumberType.Int)}", $"{target}[{choose.Below(3)}] {choose.Any("=", "+=")} {author.Value(NumberType.Int)}"),
            MaybeType => $"{target} ??= {author.Stored(type)}",
            _ => $"{target} = {author.Stored(type)}",
        };
    }

    private static IReadOnlyList<(string Target, CodeType Type)> Targets(Author author)
    {
        var all = author.Scope.All;
        List<(string, CodeType)> targets = [.. all.Where(variable => variable.CanWrite).Select(variable => (variable.Name, variable.Type))];
        targets.AddRange(
            from variable in all
            where variable.Type is DeclaredType declared && (!declared.IsValue || (variable.CanWrite && variable.IsPlace))
            from member in ((DeclaredType)variable.Type).Members
            where member.CanWrite
            select ($"{variable.Name}.{member.Name}", member.Type));
        targets.AddRange(
            from variable in all
            where variable.Type is TupleType && variable.CanWrite && variable.IsPlace
            from part in ((TupleType)variable.Type).Items.Select((item, index) => (item, index))
            select ($"{variable.Name}.Item{part.index + 1}", part.item));
        targets.AddRange(
            from variable in all
            where variable.Type is VectorType { Name: "Vector3" } && variable.CanWrite && variable.IsPlace
            select (variable.Name + ".Y", (CodeType)NumberType.Float));
        return targets;
    }
}
