namespace Condyle.Analyzers.Tests.Reading;

public class SentenceTests
{
    [Fact]
    public void The_arm_of_the_design_is_read_as_it_runs() => Oracle.Agrees(ArmSample.Body, ArmSample.Members);

    [Fact]
    public void Names_are_built_in_every_way() => Oracle.Agrees(
        """
        const string tail = "_group";
        var name = "a";
        name += "b";
        rig.Group(name + tail);
        rig.Group(string.Concat("c", tail));
        rig.Group(string.Join("_", "d", "e", "group"));
        rig.Group(string.Format("{0}_{1}_group", "f", 3));
        rig.Group($"{nameof(Names)}_{Names.Length}_{1 + 2}{tail}");
        for (var i = 0; i < Names.Length; i++)
            rig.Control($"{Names[i]}_{i}");
        var text = new System.Text.StringBuilder("x").Append('_').Append(7).ToString();
        rig.Control(text.ToUpperInvariant()[0..1] + text[^1]);
        string[] more = [.. Names, "p"];
        foreach (var (word, index) in more.Select((word, index) => (word, index)))
            rig.Control($"{word}{index}x");
        var map = new Dictionary<string, int> { ["k"] = 1, ["l"] = 2 };
        foreach (var pair in map)
            rig.Control($"{pair.Key}{pair.Value}");
        var controls = Names.Select(rig.Control).ToList();
        rig.Control(controls[0].Name + "_again").Under(controls[^1]);
        """,
        "private static readonly string[] Names = [\"m\", \"n\"];");

    [Fact]
    public void Types_of_the_users_own_are_followed() => Oracle.Agrees(
        """
        var limb = new Limb("leg", 3) { Tag = "fk" };
        var other = limb with { Count = 2 };
        foreach (var part in limb.Parts().Concat(other.Parts()))
            rig.Control(part);
        IShape shape = new Square(2);
        rig.Control($"square_{shape.Area()}_{(shape is Square { Size: > 1 } s ? s.Size : 0)}");
        int Twice(int x) => x * 2;
        var count = 0;
        Action<string> add = n => { count++; rig.Control($"{n}_{Twice(count)}"); };
        add("q");
        add("r");
        var kind = count switch { 0 => "none", 1 => "one", _ when count > 1 => "many", _ => "?" };
        rig.Control(kind);
        Out(5, out var result);
        rig.Control($"out_{result}");
        try { Fail(); } catch (InvalidOperationException e) { rig.Control(e.Message); } finally { rig.Control("finally"); }
        """,
        """
        private static void Fail() => throw new InvalidOperationException("failed");
        private static void Out(int x, out int y) => y = x + 1;
        """,
        """
        public sealed record Limb(string Name, int Count)
        {
            public string Tag { get; init; } = "ik";
            public IEnumerable<string> Parts()
            {
                for (var i = 0; i < Count; i++)
                {
                    if (i == 1) continue;
                    yield return $"{Tag}_{Name}_{Count}_{i}";
                }
            }
        }
        public interface IShape { int Area(); }
        public sealed class Square(int size) : IShape { public int Size { get; } = size; public int Area() => size * Size; }
        """);
}
