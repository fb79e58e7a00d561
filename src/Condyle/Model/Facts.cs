namespace Condyle.Model;

/// <summary>Asks for what must be known before a rig can be evaluated.</summary>
internal static class Facts
{
    public static T Known<T>(Fact<T> fact, string what) => fact.TryKnown(out var value) ? value : throw new RigGeometryException($"{what} isn't known.");

    public static string Known(Text text, string what) => text.TryKnown(out var value) ? value : throw new RigGeometryException($"{what} isn't known.");
}
