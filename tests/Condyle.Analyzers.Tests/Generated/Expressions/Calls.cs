namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Calls of what the program declares, with arguments in every form.</summary>
internal sealed class Calls : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        foreach (var method in author.Program.Methods.Concat(author.Scope.Functions).Where(method => wanted.Equals(method.Result) && CanCall(method, author)))
            offers.Add(2, () => Call(method, author));
        foreach (var method in author.Program.Extensions.Where(method => wanted.Equals(method.Result)))
            offers.Add(2, () => $"{author.Moving(method.Parameters[0].Type)}.{Call(method with { Parameters = [.. method.Parameters.Skip(1)] }, author)}");
        foreach (var (on, member) in author.Program.ExtensionProperties.Where(property => property.Member.Type.Equals(wanted)))
            offers.Add(2, () => $"{author.Moving(on)}.{member.Name}");
        foreach (var function in author.Scope.All.Where(variable => variable.Type is FunctionType { Result: { } result } && result.Equals(wanted)))
            offers.Add(3, () => $"{function.Name}{author.Choose.Any("", ".Invoke")}({string.Join(", ", ((FunctionType)function.Type).Parameters.Select(author.Value))})");
    }

    /// <summary>Whether there is a variable for each parameter by reference.</summary>
    public static bool CanCall(Callable method, Author author) => method.Parameters.All(parameter => parameter.Passing != Passing.Ref || Places(parameter.Type, author).Count > 0);

    public static string New(DeclaredType type, Author author, Func<CodeType, string> argument)
    {
        var made = type.Derived.Count > 0 && (type.Constructors.Count == 0 || author.Choose.Chance(50)) ? author.Choose.Of(type.Derived) : type;
        if (made.Constructors.Count == 0)
            return New(made, author, argument);
        var constructor = author.Choose.Of(made.Constructors);
        var created = $"new {made}({Arguments(constructor, author, argument)})";
        var initialised = made.Members.Where(member => member.CanInitialise).ToList();
        if (initialised.Count > 0 && author.Choose.Chance(30))
            created += $" {{ {string.Join(", ", author.Choose.Some(initialised, 2).Select(member => Initialised(member.Name.Split('.'), argument(member.Type))))} }}";
        return made == type ? created : $"(({type}){created})";
    }

    private static string Initialised(string[] path, string value) => path is [var owner, var inner] ? $"{owner} = {{ {inner} = {value} }}" : $"{path[0]} = {value}";

    public static string Call(Callable method, Author author) => $"{method.Name}({Arguments(method, author, author.Value)})";

    public static string Arguments(Callable method, Author author, Func<CodeType, string> argument)
    {
        var choose = author.Choose;
        var taken = new HashSet<string>();
        var isNamed = choose.Chance(25) && method.Parameters.All(parameter => parameter.Passing != Passing.Params);
        var given = new List<(string Name, string Value)>();
        foreach (var parameter in method.Parameters)
        {
            switch (parameter.Passing)
            {
                case Passing.Optional when choose.Chance(50):
                    isNamed |= parameter != method.Parameters[^1] && method.Parameters.All(other => other.Passing != Passing.Params);
                    if (!isNamed)
                        given.Add((parameter.Name, argument(parameter.Type)));
                    break;
                case Passing.Ref:
                    var free = Places(parameter.Type, author).Where(variable => taken.Add(variable.Name)).ToList();
                    given.Add((parameter.Name, "ref " + (free.Count > 0 ? choose.Of(free) : choose.Of(Places(parameter.Type, author))).Name));
                    break;
                case Passing.Out:
                    given.Add((parameter.Name, choose.Any("out _", $"out var {author.Name("given")}")));
                    break;
                case Passing.In:
                    given.Add((parameter.Name, argument(parameter.Type)));
                    break;
                case Passing.Params:
                    var item = ((parameter.Type as ArrayType)?.Item ?? (parameter.Type as CollectionType)?.Item)!;
                    if (choose.Chance(30) && parameter.Type is not CollectionType { Family: "ReadOnlySpan" })
                        given.Add((parameter.Name, author.Value(parameter.Type)));
                    else
                        given.AddRange(Enumerable.Range(0, choose.Below(4)).Select(_ => (parameter.Name, argument(item))));
                    break;
                default:
                    given.Add((parameter.Name, argument(parameter.Type)));
                    break;
            }
        }

        if (!isNamed)
            return string.Join(", ", given.Select(pair => pair.Value));
        // Named arguments may stand in any order; they are evaluated as they are written.
        var shuffled = given.OrderBy(_ => choose.Below(100)).ToList();
        return string.Join(", ", shuffled.Select(pair => $"{pair.Name}: {pair.Value}"));
    }

    private static List<Variable> Places(CodeType type, Author author) => [.. author.Scope.Writable(type).Where(variable => variable.IsPlace)];
}
