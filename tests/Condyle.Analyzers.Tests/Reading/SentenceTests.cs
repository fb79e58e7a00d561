namespace Condyle.Analyzers.Tests.Reading;

public class SentenceTests
{
    private const string Arm = """
        private static (Joint Root, Joint Shoulder, Joint Twist, Joint Elbow, Joint Wrist) Joints(RigDraft rig, Side side)
        {
            var skeleton = rig.Skeleton("test");
            var x = side.Sign;
            var root = skeleton.Root($"root_{side}", JointRole.Helper, at: new Vector3(0, 1, 0));
            var shoulder = root.Child($"shoulder_{side}", at: new Vector3(0.2f * x, 0.4f, 0));
            var twist = shoulder.Child($"shoulder_twist_{side}", JointRole.Twist, at: new Vector3(0.1f * x, 0, 0));
            var elbow = twist.Child($"elbow_{side}", at: new Vector3(0.2f * x, 0, -0.02f), turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, 0.1f));
            var wrist = elbow.Child($"wrist_{side}", at: new Vector3(0.25f * x, 0, 0.02f));
            return (root, shoulder, twist, elbow, wrist);
        }
        """;

    [Fact]
    public void The_arm_of_the_design_is_read_as_it_runs() => Oracle.Agrees(
        """
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        foreach (var side in Side.Both)
            BuildArm(rig, side, systems, world);
        """,
        Arm + """
        private static void BuildArm(RigDraft rig, Side side, Group systems, Control world)
        {
            var joints = Joints(rig, side);
            var arm = rig.Chain(joints.Shoulder, joints.Wrist).Without(JointRole.Twist);
            var root = rig.Control($"arm_root_{side}").Under(world).PlacedAt(arm.Root);
            var parts = rig.Group($"arm_{side}_group").Under(systems).PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(arm.Tip);
            var elbow = rig.Control($"elbow_pole_{side}").Under(world).PlacedAt(ik.PolePoint(distance: 0.4f));
            rig.TwoBone(ik).Reach(hand).Face(elbow);
            var fk = arm.Copy("fk").Under(parts);
            var above = root;
            foreach (var joint in arm)
            {
                var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }
            var fkAmount = hand.Switch("fk").AlsoOn(root);
            rig.Blend(arm).From(ik, fkAmount.Inverse).From(fk, fkAmount);
            rig.Label($"ik_arm_label_{side}", "IK").ShownBy(fkAmount.Inverse);
            rig.Label($"fk_arm_label_{side}", "FK").ShownBy(fkAmount);
        }
        """);

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
