using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>What the vectors of two, three and four components have in common.</summary>
internal static class VectorCalls
{
    private const string Two = "System.Numerics.Vector2.";
    private const string Three = "System.Numerics.Vector3.";
    private const string Four = "System.Numerics.Vector4.";

    public static void Register()
    {
        foreach (var name in new[] { ".ctor", "Create" })
        {
            Pure.Add(Two + name, (float all) => new Vector2(all));
            Pure.Add(Two + name, (float x, float y) => new Vector2(x, y));
            Pure.Add(Three + name, (float all) => new Vector3(all));
            Pure.Add(Three + name, (float x, float y, float z) => new Vector3(x, y, z));
            Pure.Add(Three + name, (Vector2 v, float z) => new Vector3(v, z));
            Pure.Add(Four + name, (float all) => new Vector4(all));
            Pure.Add(Four + name, (float x, float y, float z, float w) => new Vector4(x, y, z, w));
            Pure.Add(Four + name, (Vector2 v, float z, float w) => new Vector4(v, z, w));
            Pure.Add(Four + name, (Vector3 v, float w) => new Vector4(v, w));
        }

        foreach (var name in new[] { "Vector2", "Vector3", "Vector4" })
            FrameworkTable.Add("System.Numerics." + name, "ToString", call => call.Count == 3 && call[1] is null or TextValue { Text.IsOpen: false } ? TextOf.Of(call[0], call.Machine, call[1]?.ToString(), call[2] == OtherCalls.InvariantCulture) : TextValue.Open);
        Constants();
        Alike<Vector2>(Two, (v, f) => new Vector2(f(v.X), f(v.Y)), (a, b, f) => new Vector2(f(a.X, b.X), f(a.Y, b.Y)), v => v.X + v.Y);
        Alike<Vector3>(Three, (v, f) => new Vector3(f(v.X), f(v.Y), f(v.Z)), (a, b, f) => new Vector3(f(a.X, b.X), f(a.Y, b.Y), f(a.Z, b.Z)), v => v.X + v.Y + v.Z);
        Alike<Vector4>(Four, (v, f) => new Vector4(f(v.X), f(v.Y), f(v.Z), f(v.W)), (a, b, f) => new Vector4(f(a.X, b.X), f(a.Y, b.Y), f(a.Z, b.Z), f(a.W, b.W)), v => v.X + v.Y + v.Z + v.W);
        Own();
        Transforms();
    }

    private static void Constants()
    {
        foreach (var (name, value) in new[] { ("Zero", 0f), ("One", 1f), ("E", (float)Math.E), ("Pi", (float)Math.PI), ("Tau", (float)(2 * Math.PI)), ("Epsilon", float.Epsilon), ("NaN", float.NaN), ("PositiveInfinity", float.PositiveInfinity), ("NegativeInfinity", float.NegativeInfinity) })
        {
            Pure.Constant(Two + name, new Vector2(value));
            Pure.Constant(Three + name, new Vector3(value));
            Pure.Constant(Four + name, new Vector4(value));
        }

        Pure.Constant(Two + "UnitX", Vector2.UnitX);
        Pure.Constant(Two + "UnitY", Vector2.UnitY);
        Pure.Constant(Three + "UnitX", Vector3.UnitX);
        Pure.Constant(Three + "UnitY", Vector3.UnitY);
        Pure.Constant(Three + "UnitZ", Vector3.UnitZ);
        Pure.Constant(Four + "UnitX", Vector4.UnitX);
        Pure.Constant(Four + "UnitY", Vector4.UnitY);
        Pure.Constant(Four + "UnitZ", Vector4.UnitZ);
        Pure.Constant(Four + "UnitW", Vector4.UnitW);
    }

    // What is done component by component.
    private static void Alike<T>(string type, Func<T, Func<float, float>, T> each, Func<T, T, Func<float, float, float>, T> both, Func<T, float> sum)
        where T : struct, IEquatable<T>
    {
        foreach (var (names, run) in new (string[], Func<float, float, float>)[]
        {
            (["op_Addition", "Add"], (a, b) => a + b), (["op_Subtraction", "Subtract"], (a, b) => a - b),
            (["op_Multiply", "Multiply"], (a, b) => a * b), (["op_Division", "Divide"], (a, b) => a / b),
            (["Min", "MinNative"], (a, b) => (float)RealMath.Min(a, b)), (["Max", "MaxNative"], (a, b) => (float)RealMath.Max(a, b)),
            (["MinNumber"], (a, b) => (float)RealMath.MinNumber(a, b)), (["MaxNumber"], (a, b) => (float)RealMath.MaxNumber(a, b)),
            (["CopySign"], (a, b) => (float)RealMath.CopySign(a, b)), (["Hypot"], (a, b) => (float)RealMath.Hypot(a, b)),
        })
        {
            foreach (var name in names)
                Pure.Add(type + name, (T a, T b) => both(a, b, run));
        }

        foreach (var name in new[] { "op_Multiply", "Multiply" })
        {
            Pure.Add(type + name, (T v, float by) => each(v, x => x * by));
            Pure.Add(type + name, (float by, T v) => each(v, x => by * x));
        }

        foreach (var name in new[] { "op_Division", "Divide" })
            Pure.Add(type + name, (T v, float by) => each(v, x => x / by));
        foreach (var (names, run) in new (string[], Func<float, float>)[]
        {
            (["op_UnaryNegation", "Negate"], x => -x), (["op_UnaryPlus"], x => x), (["Abs"], Math.Abs), (["SquareRoot"], x => (float)Math.Sqrt(x)),
            (["Round"], x => (float)Math.Round(x)), (["Truncate"], x => (float)Math.Truncate(x)), (["Sin"], x => (float)Math.Sin(x)), (["Cos"], x => (float)Math.Cos(x)),
            (["Asin"], x => (float)Math.Asin(x)), (["Exp"], x => (float)Math.Exp(x)), (["Log"], x => (float)Math.Log(x)), (["Log2"], x => (float)RealMath.Log2(x)),
            (["DegreesToRadians"], x => x * (float)(Math.PI / 180)), (["RadiansToDegrees"], x => x * (float)(180 / Math.PI)),
        })
        {
            foreach (var name in names)
                Pure.Add(type + name, (T v) => each(v, run));
        }

        Pure.Add(type + "Round", (T v, MidpointRounding how) => each(v, x => (float)RealMath.Round(x, how)));
        foreach (var name in new[] { "Clamp", "ClampNative" })
            Pure.Add(type + name, (T v, T least, T most) => both(both(v, least, (a, b) => (float)RealMath.Max(a, b)), most, (a, b) => (float)RealMath.Min(a, b)));
        Pure.Add(type + "Lerp", (T a, T b, float amount) => both(a, b, (x, y) => RealMath.Lerp(x, y, amount)));
        Pure.Add(type + "Lerp", (T a, T b, T amount) => both(both(a, amount, (x, t) => x * (1f - t)), both(b, amount, (y, t) => y * t), (x, y) => x + y));
        foreach (var name in new[] { "FusedMultiplyAdd", "MultiplyAddEstimate" })
            Pure.Add(type + name, (T a, T b, T c) => both(both(a, b, (x, y) => x * y), c, (x, y) => x + y));
        Pure.Add(type + "Sum", sum);
        Pure.Add(type + "Dot", (T a, T b) => sum(both(a, b, (x, y) => x * y)));
        Pure.Add(type + "LengthSquared", (T v) => sum(each(v, x => x * x)));
        Pure.Add(type + "DistanceSquared", (T a, T b) => sum(both(a, b, (x, y) => (x - y) * (x - y))));
        Pure.Add(type + "op_Equality", (T a, T b) => a.Equals(b));
        Pure.Add(type + "op_Inequality", (T a, T b) => !a.Equals(b));
        Pure.Add(type + "Equals", (T a, T b) => a.Equals(b));
        Pure.Add(type + "get_Item", (T v, int at) => Components.Of(v)![at]);
        foreach (var name in new[] { "set_Item", "WithElement" })
            Pure.Add(type + name, (T v, int at, float value) => Components.With(v, at, value) ?? throw new ArgumentOutOfRangeException(nameof(at)));
    }

    private static void Own()
    {
        Pure.Add(Two + "Length", (Vector2 v) => v.Length());
        Pure.Add(Three + "Length", (Vector3 v) => v.Length());
        Pure.Add(Four + "Length", (Vector4 v) => v.Length());
        Pure.Add(Two + "Distance", (Vector2 a, Vector2 b) => Vector2.Distance(a, b));
        Pure.Add(Three + "Distance", (Vector3 a, Vector3 b) => Vector3.Distance(a, b));
        Pure.Add(Four + "Distance", (Vector4 a, Vector4 b) => Vector4.Distance(a, b));
        Pure.Add(Two + "Normalize", (Vector2 v) => Vector2.Normalize(v));
        Pure.Add(Three + "Normalize", (Vector3 v) => Vector3.Normalize(v));
        Pure.Add(Four + "Normalize", (Vector4 v) => Vector4.Normalize(v));
        Pure.Add(Two + "Reflect", (Vector2 v, Vector2 normal) => Vector2.Reflect(v, normal));
        Pure.Add(Three + "Reflect", (Vector3 v, Vector3 normal) => Vector3.Reflect(v, normal));
        Pure.Add(Two + "Cross", (Vector2 a, Vector2 b) => (a.X * b.Y) - (a.Y * b.X));
        Pure.Add(Three + "Cross", (Vector3 a, Vector3 b) => Vector3.Cross(a, b));
    }

    private static void Transforms()
    {
        Pure.Add(Two + "Transform", (Vector2 v, Matrix4x4 by) => Vector2.Transform(v, by));
        Pure.Add(Two + "Transform", (Vector2 v, Quaternion by) => Vector2.Transform(v, by));
        Pure.Add(Two + "TransformNormal", (Vector2 v, Matrix4x4 by) => Vector2.TransformNormal(v, by));
        Pure.Add(Three + "Transform", (Vector3 v, Matrix4x4 by) => Vector3.Transform(v, by));
        Pure.Add(Three + "Transform", (Vector3 v, Quaternion by) => Vector3.Transform(v, by));
        Pure.Add(Three + "TransformNormal", (Vector3 v, Matrix4x4 by) => Vector3.TransformNormal(v, by));
        Pure.Add(Four + "Transform", (Vector2 v, Matrix4x4 by) => Vector4.Transform(v, by));
        Pure.Add(Four + "Transform", (Vector3 v, Matrix4x4 by) => Vector4.Transform(v, by));
        Pure.Add(Four + "Transform", (Vector4 v, Matrix4x4 by) => Vector4.Transform(v, by));
        Pure.Add(Four + "Transform", (Vector2 v, Quaternion by) => Vector4.Transform(v, by));
        Pure.Add(Four + "Transform", (Vector3 v, Quaternion by) => Vector4.Transform(v, by));
        Pure.Add(Four + "Transform", (Vector4 v, Quaternion by) => Vector4.Transform(v, by));
    }
}
