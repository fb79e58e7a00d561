namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Generic types and methods, and what their parameters stand for.</summary>
public class GenericTests
{
    [Theory]
    [InlineData("var b = new Box<int>(); rig.Control($\"{b.Value}\"); b.Value = 3; rig.Control($\"{b.Value}{b.Name}\"); var s = new Box<string>(); rig.Control(s.Value ?? \"null\"); rig.Control(s.Name); rig.Control(new Named().Name + new Named().Value);")]
    [InlineData("var p = new Pair<int, string>(1, \"a\"); var (x, y) = p; rig.Control(y + x); rig.Control(p.Swap().First); rig.Control(Pair.Of(2, 'c').Second.ToString());")]
    [InlineData("rig.Control(Kind(1) + Kind(\"s\") + Kind(2f) + Kind<object?>(null)); rig.Control(Zero<int>() + \"\" + Zero<bool>() + (Zero<string>() ?? \"n\"));")]
    [InlineData("object o = new Box<int>(); rig.Control($\"{o is Box<int>}{o is Box<string>}{o is Box<int> { Value: 0 }}\"); rig.Control(typeof(int).Name + typeof(Box<int>).Name + nameof(Box<int>));")]
    [InlineData("rig.Control(Make<Gull>().Cry + Make<Crab>().Cry); rig.Control(Cry<Gull>() + Cry<Crab>()); rig.Control(Animal<Gull>.Cached + Animal<Crab>.Cached + Animal<Gull>.Made);")]
    [InlineData("rig.Control($\"{Sum([1, 2, 3])}{(int)Sum([1.5f, 2.5f])}\"); rig.Control($\"{Biggest(3, 9, 4)}{Biggest(\"a\")}\");")]
    [InlineData("var tree = new Tree<string>(\"root\"); tree.Add(\"a\").Add(\"b\"); tree.Add(\"c\"); foreach (var n in tree.All()) rig.Control(n);")]
    [InlineData("var reg = new Registry<Side, Control>(); foreach (var side in Side.Both) reg[side] = rig.Control($\"hand_{side}\"); rig.Group(\"g_group\").Under(reg[Side.Left]); rig.Control($\"{reg.Count}\");")]
    [InlineData("rig.Control(Apply(3, x => x * 2).ToString()); rig.Control(Apply(\"a\", x => x.Length).ToString()); Func<int, string> f = Describe; rig.Control(f(4)); rig.Control(Compose<int, int, string>(x => x + 1, x => $\"r{x}\")(5));")]
    public void Types_and_methods(string code) => Oracle.Agrees(
        code,
        """
        private class Box<T> { public T Value = default!; public string Name => typeof(T).Name + Value; }
        private sealed class Named : Box<int> { public Named() => Value = 5; }
        private sealed record Pair<A, B>(A First, B Second) { public Pair<B, A> Swap() => new(Second, First); }
        private static class Pair { public static Pair<A, B> Of<A, B>(A a, B b) => new(a, b); }
        private static string Kind<T>(T value) => value switch { int => "i", string => "s", null => "n", _ => "o" };
        private static T? Zero<T>() => default;
        private interface IAnimal { string Cry { get; } static abstract string Loud { get; } static virtual int Legs => 2; }
        private sealed class Gull : IAnimal { public string Cry => "kee"; public static string Loud => "KEE"; }
        private sealed class Crab : IAnimal { public string Cry => "click"; public static string Loud => "CLICK"; static int IAnimal.Legs => 8; }
        private static T Make<T>() where T : new() => new T();
        private static string Cry<T>() where T : IAnimal => T.Loud + T.Legs;
        private static class Animal<T> where T : IAnimal { public static int Made; public static readonly string Cached = Next() + T.Loud; private static string Next() { Made++; return "m"; } }
        private static T Sum<T>(T[] items) where T : INumber<T> { var sum = T.Zero; foreach (var item in items) sum += item; return sum; }
        private static T Biggest<T>(params T[] items) where T : IComparable<T> { var best = items[0]; foreach (var item in items) if (item.CompareTo(best) > 0) best = item; return best; }
        private sealed class Tree<T>(T value) { private readonly List<Tree<T>> below = []; public Tree<T> Add(T v) { var t = new Tree<T>(v); below.Add(t); return t; } public IEnumerable<T> All() { yield return value; foreach (var b in below) foreach (var v in b.All()) yield return v; } }
        private sealed class Registry<TKey, TValue> where TKey : notnull { private readonly Dictionary<TKey, TValue> map = new(); public TValue this[TKey key] { get => map[key]; set => map[key] = value; } public int Count => map.Count; }
        private static R Apply<T, R>(T x, Func<T, R> f) => f(x);
        private static string Describe<T>(T x) => $"d{x}";
        private static Func<A, C> Compose<A, B, C>(Func<A, B> f, Func<B, C> g) => a => g(f(a));
        """);

    [Theory]
    [InlineData("rig.Control($\"{typeof(List<string?>) == typeof(List<string>)}{typeof(string?[]) == typeof(string[])}\");")]
    [InlineData("rig.Control($\"{typeof((int A, int B)) == typeof((int, int))}{typeof(List<(int A, int B)>) == typeof(List<(int, int)>)}\");")]
    [InlineData("rig.Control($\"{Count<(int A, int B)>.Next()}{Count<(int, int)>.Next()}{Count<(int, long)>.Next()}\"); rig.Control($\"{Count<List<string?>>.Next()}{Count<List<string>>.Next()}{Count<List<int>>.Next()}\");")]
    public void Whether_references_may_be_null_and_what_items_are_called_makes_no_other_type(string code) => Oracle.Agrees(code, "private static class Count<T> { private static int count; public static int Next() => count++; }");
}
