using Condyle.Analyzers.Tests.Reading.Framework;

namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Values that may be missing: operators, conversions and checks on them.</summary>
public class LiftedTests
{
    [Fact]
    public void Operators_of_the_users_own() => FrameworkOracle.Agrees(
        """
        Share? none = null; Share? some = new(3); Share here = new(2);
        Share?[] all = [none + here, some + here, -none, -some]; foreach (var one in all) rig.Control($"{one?.Eighths}_");
        rig.Control($"{none < here}{some > here}{none == null}{some == here}{none != some}{none == none}{some != null}");
        none += here; none++; some += here; some++; rig.Control($"{none?.Eighths}_{some?.Eighths}");
        int? eighths = (int?)none; rig.Control($"{eighths}_{(int?)some}"); rig.Control(Try(() => (int)none)); rig.Control(Try(() => (int)some));
        Share? made = (int?)null; rig.Control($"{made is null}"); made = (int?)4; rig.Control($"{made?.Eighths}");
        """,
        """
        private readonly struct Share(int eighths)
        {
            public int Eighths { get; } = eighths;
            public static Share operator +(Share a, Share b) => new(a.Eighths + b.Eighths);
            public static Share operator -(Share a) => new(8 - a.Eighths);
            public static Share operator ++(Share a) => new(a.Eighths + 1);
            public static bool operator <(Share a, Share b) => a.Eighths < b.Eighths;
            public static bool operator >(Share a, Share b) => a.Eighths > b.Eighths;
            public static bool operator ==(Share a, Share b) => a.Eighths == b.Eighths;
            public static bool operator !=(Share a, Share b) => a.Eighths != b.Eighths;
            public static explicit operator int(Share a) => a.Eighths;
            public static implicit operator Share(int eighths) => new(eighths);
            public override bool Equals(object? other) => other is Share share && this == share;
            public override int GetHashCode() => Eighths;
        }
        """);

    [Theory]
    [InlineData("int? a = 300; rig.Control(Try(() => checked((byte?)a))); rig.Control(Try(() => checked((byte)a))); rig.Control($\"{unchecked((byte?)a)}{(byte?)a}\"); checked { rig.Control(Try(() => (byte?)(a * 100))); rig.Control(Try(() => unchecked((byte?)a))); Func<int?, byte?> narrow = n => (byte?)n; rig.Control(Try(() => narrow(a))); }")]
    [InlineData("byte? b = 200; b += 100; rig.Control($\"{b}\"); b ^= 0xFF; rig.Control($\"{b}\"); byte? c = 200; rig.Control(Try(() => checked(c += 100))); short? s = 3; s *= 2; rig.Control($\"{s}{s.GetType() == typeof(short)}\"); long? l = 1; l += 2; rig.Control($\"{l.GetType() == typeof(long)}\"); double? d = 1; int? i = 3; d += i; rig.Control($\"{d}\"); i += null; rig.Control($\"{i is null}\"); bool? t = null; t |= true; rig.Control($\"{t}\");")]
    public void Numbers(string code) => FrameworkOracle.Agrees(code);

    [Fact]
    public void What_comes_out_of_an_object_is_exactly_of_the_type_asked_for() => FrameworkOracle.Agrees(
        """
        object o = 3; object none = null!; IComparable c = 5;
        rig.Control(Try(() => (int)none)); rig.Control(Try(() => (long)o)); rig.Control(Try(() => (int?)o)); rig.Control(Try(() => (long?)o)); rig.Control(Try(() => (int?)none is null));
        rig.Control(Try(() => (uint)o)); rig.Control(Try(() => (short)c)); rig.Control(Try(() => (int)c)); rig.Control(Try(() => (Vector3)o)); rig.Control(Try(() => ((int, int))o)); rig.Control(Try(() => (DateTime)o));
        rig.Control(Try(() => (Kind)(object)1)); rig.Control(Try(() => (int)(object)Kind.B)); rig.Control(Try(() => (byte)(object)Kind.B)); rig.Control(Try(() => (Kind)(object)Kind.B)); rig.Control(Try(() => (Kind)(object)1L));
        rig.Control(Try(() => Out<int>("a"))); rig.Control(Try(() => Out<int>(4))); rig.Control(Try(() => Out<int>(null))); rig.Control(Try(() => Out<string>(null) is null)); rig.Control(Try(() => Out<int?>(null) is null)); int? gone = null; rig.Control(Try(() => (int)gone)); rig.Control(Try(() => (long)gone)); rig.Control(Try(() => (int)(int?)3)); rig.Control(Try(() => Out<Size>(4)));
        rig.Control(Try(() => (Size)o)); Size? size = null; rig.Control(Try(() => ((Size)size).N)); rig.Control(Try(() => ((Size)(object)new Size { N = 4 }).N));
        """,
        "private enum Kind { A, B } private struct Size { public int N; } private static T Out<T>(object? o) => (T)o!;");
}
