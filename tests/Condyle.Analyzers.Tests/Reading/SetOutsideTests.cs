using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>A definition that others fit out before its rig is built: what they set isn't what its constructor left, and what nobody sets is.</summary>
public class SetOutsideTests
{
    private const string Crane = """
        public sealed class Crane : IRigDefinition
        {
            private readonly List<string> parts = [];
            private string suffix = "";
            private int reach;
            private Vector3 foot;
            public Options Options { get; } = new();
            public Dictionary<string, string> Names { get; } = new() { ["arm"] = "arm" };
            public string Side { get; private set; } = "";
            public event Action<RigDraft>? Adding;
            public Crane With(string text) { suffix = text; return this; }
            public Crane WithReach(int metres) { this.reach = metres; foot.X = metres; return this; }
            public Crane Part(string name) { parts.Add(name); return this; }
            public Crane On(string side) { Side = side; return this; }
            public static Crane Big() => new Crane().With("_group").WithReach(3);
            public (List<string> Names, int Count) Stock = ([], 0);
            public void Define(RigDraft rig)
            {
                DEFINE
            }
        }
        public sealed class Switch : IDisposable
        {
            public Switch() => Fleet.Suffix += "";
            public void Dispose() => Fleet.Used = "_group";
            public void Deconstruct(out int one, out int two) => (Fleet.Parted, one, two) = ("_group", 1, 2);
            public override string ToString() => Fleet.Said = "_group";
            public override bool Equals(object? other) => (Fleet.Compared = "_group") == "";
            public override int GetHashCode() => 0;
            public static Switch operator +(Switch one, int two) { Fleet.Added = "_group"; return one; }
        }
        public abstract class Plant { protected Plant() => Fleet.Based = "_group"; }
        public sealed class Winch : Plant;
        public static class Extensions { public static void Add(this Queue<string> names, string name) => Fleet.Listed = name; }
        public sealed class Unused { public override string ToString() => Fleet.NeverSaid = "_group"; }
        public sealed class Options { public string Suffix { get; set; } = ""; public List<string> Parts { get; } = []; }
        public static class Fleet
        {
            public static readonly List<string> Names = [];
            public static string Suffix = "", Used = "", Parted = "", Said = "", Compared = "", Added = "", Listed = "", NeverSaid = "", Prepared = "", Based = "";
            public static event Action? Made;
            public static void Add(string name) => Names.Add(name);
            public static Crane Fit(Crane crane) { crane.Options.Suffix = "_group"; crane.Options.Parts.Add("x"); return crane.On("_group"); }
            public static void Raise() => Made?.Invoke();
        }
        """;

    [Theory]
    [InlineData("rig.Group(\"arm\" + suffix);", "new Crane().With(\"_group\")")]
    [InlineData("rig.Group(\"arm\" + suffix);", "Crane.Big()")]
    [InlineData("if (reach == 0) throw new InvalidOperationException(\"no reach\");", "Crane.Big()")]
    [InlineData("if (foot.X == 0) throw new InvalidOperationException(\"no foot\");", "Crane.Big()")]
    [InlineData("if (parts.Count == 0) throw new InvalidOperationException(\"no parts\");", "new Crane().Part(\"a\")")]
    [InlineData("rig.Group(\"arm\" + Side);", "Fleet.Fit(new Crane())")]
    [InlineData("rig.Group(\"arm\" + Options.Suffix);", "Fleet.Fit(new Crane())")]
    [InlineData("if (Options.Parts.Count == 0) throw new InvalidOperationException();", "Fleet.Fit(new Crane())")]
    [InlineData("rig.Group(Names[\"arm\"]);", "new Crane { Names = { [\"arm\"] = \"arm_group\" } }")]
    [InlineData("if (Adding is null) throw new InvalidOperationException();", "Made()")]
    [InlineData("if (Fleet.Names.Count == 0) throw new InvalidOperationException();", "Made()")]
    [InlineData("var name = \"arm\"; Fleet.Raise(); rig.Group(name + Fleet.Suffix);", "Made()")]
    [InlineData("if (Stock.Names.Count == 0) throw new InvalidOperationException();", "Stocked()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Used);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Parted);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Based);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Said);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Compared);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Added);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Listed);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Prepared);", "new Crane()")]
    public async Task What_others_set_before_is_not_known(string define, string made) => Assert.Empty(await In(define, made));

    [Theory]
    [InlineData("rig.Group(\"arm\" + suffix);", "new Crane().WithReach(3)")]
    [InlineData("rig.Group(\"arm\" + Side);", "Crane.Big()")]
    [InlineData("rig.Group(\"arm\" + Options.Suffix);", "Crane.Big()")]
    [InlineData("rig.Group(Names[\"arm\"]);", "Crane.Big()")]
    [InlineData("if (parts.Count == 0) rig.Group(\"arm\");", "new Crane()")]
    [InlineData("if (Adding is null) rig.Group(\"arm\");", "new Crane()")]
    [InlineData("rig.Group(\"arm\" + Fleet.NeverSaid);", "Made()")]
    [InlineData("rig.Group(\"arm\" + Fleet.Said);", "new Crane()")]
    [InlineData("if (Stock.Names.Count == 0) rig.Group(\"arm\");", "Made()")]
    [InlineData("suffix = \"x\"; With(\"arm\"); rig.Group(suffix);", "new Crane()")]
    public async Task What_nobody_sets_is_as_the_constructor_left_it(string define, string made) => Assert.Equal("CDY1001", Assert.Single(await In(define, made)));

    [Theory]
    [InlineData("new Docker(\"_group\")")]
    [InlineData("Docker.Big()", "CDY1001 \"_\"")]
    [InlineData("new Docker()", "CDY1001 \"x\"")]
    [InlineData("Docker.Either()", "CDY1001 \"x\"", "CDY1001 \"_\"")]
    public async Task A_rig_is_made_by_the_constructors_that_are_called(string made, params string[] expected) => Assert.Equal(
        expected,
        await Findings.InFiles(
            ("rig.cs", Oracle.Usings + $$"""
            public sealed class Docker : IRigDefinition
            {
                private readonly string suffix;
                public Docker() => suffix = "x";
                public Docker(string suffix) => this.suffix = suffix;
                private Docker(int size) => suffix = new string('_', size) + "_";
                {{(made.Contains("Big", StringComparison.Ordinal) ? "public static Docker Big() => new(3);" : made.Contains("Either", StringComparison.Ordinal) ? "public static Docker Either() => Environment.TickCount > 3 ? new Docker() : new Docker(3);" : "")}}
                public void Define(RigDraft rig) => rig.Group("arm" + suffix);
            }
            """),
            ("program.cs", $"internal static class Program {{ public static void Main() => Condyle.Rig.Examine({made}); }}")));

    [Fact]
    public async Task The_main_program_makes_rigs_by_the_constructor_without_parameters() => Assert.Equal(
        ["CDY1001 \"x\""],
        await Findings.InFiles(
            ("rig.cs", Oracle.Usings + "public sealed class Docker : IRigDefinition { private readonly string suffix; public Docker() => suffix = \"x\"; public Docker(string suffix) => this.suffix = suffix; public void Define(RigDraft rig) => rig.Group(\"arm\" + suffix); }"),
            ("program.cs", "internal static class Program { public static int Main(string[] args) { _ = new Docker(\"y\"); return Condyle.Host.RigProgram.Run(args); } }")));

    /// <summary>What builds rigs may be handed on, or go by another name.</summary>
    [Theory]
    [InlineData("new IRigDefinition[] { new Docker() }.Select(Rig.Examine).ToList();")]
    [InlineData("Func<IRigDefinition, Rig> build = Rig.Build; build(new Docker());")]
    [InlineData("Built.Examine(new Docker());", "using Built = Condyle.Rig;")]
    [InlineData("Examine(new Docker());", "using static Condyle.Rig;")]
    [InlineData("Run([]);", "using static Condyle.Host.RigProgram;")]
    [InlineData("Started.Run([]);", "using Started = Condyle.Host.RigProgram;")]
    public async Task What_is_set_before_any_way_to_build_is_not_known(string build, string given = "")
    {
        const string Docker = "public sealed class Docker : IRigDefinition { public void Define(RigDraft rig) => rig.Group(\"arm\" + Fleet.Suffix); } public static class Fleet { public static string Suffix = \"\"; }";
        Task<IReadOnlyList<string>> With(string code) => Findings.InFiles(("rig.cs", Oracle.Usings + Docker), ("program.cs", given + Oracle.Usings + $"internal static class Program {{ public static void Main() {{ {code} }} }}"));
        Assert.NotEmpty(await With(build));
        Assert.Empty(await With("Fleet.Suffix = \"_group\"; " + build));
    }

    private const string Made = """
        private static Crane Made()
        {
            var crane = new Crane();
            crane.Adding += rig => rig.Group("x_group");
            Fleet.Add("x");
            Fleet.Made += () => Fleet.Suffix = "_group";
            using (var one = new Switch())
            {
                var (first, second) = one;
                _ = $"{one + 1} {first} {new List<object> { 2 }.Contains(one)}";
            }
            _ = new Queue<string> { "_group" };
            _ = new Winch();
            return crane;
        }
        """;

    private const string Stocked = """
        private static Crane Stocked()
        {
            var crane = new Crane();
            crane.Stock.Names.Add("x");
            return crane;
        }
        """;

    private static async Task<IReadOnlyList<string>> In(string define, string made)
    {
        var found = await FrontEnds.Read(
            ("rig.cs", Oracle.Usings + Crane.Replace("DEFINE", define, StringComparison.Ordinal)),
            ("program.cs", Oracle.Usings + $$"""
            internal sealed class BeforeAttribute : Attribute;
            internal static class Program
            {
                public static void Main() => Build({{made}});
                private static void Build(Crane crane) => Rig.Examine(crane);
                {{(made == "Made()" ? Made : made == "Stocked()" ? Stocked : "")}}
                [Before] public static void Prepare() => Fleet.Prepared = "_group";
            }
            """));
        return [.. found.Where(finding => RigSnippet.Rules.Contains(finding.Id)).Select(finding => finding.Id)];
    }
}
