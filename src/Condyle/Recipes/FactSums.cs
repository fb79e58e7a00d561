using System.Numerics;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>Counts with facts: what is made of one that isn't known isn't known either.</summary>
internal static class FactSums
{
    /// <summary>For the running program, where every fact is known.</summary>
    public static T OrDefault<T>(this Fact<T> fact) => fact.TryKnown(out var known) ? known : default!;

    public static Fact<float> Times(this Fact<float> fact, float factor) => fact.TryKnown(out var known) ? known * factor : Fact<float>.Open;

    public static Fact<float> Plus(this Fact<float> left, Fact<float> right) => left.TryKnown(out var one) && right.TryKnown(out var other) ? one + other : Fact<float>.Open;

    /// <summary>A place in front of a character that faces +Z.</summary>
    public static Fact<Vector3> InFront(Fact<float> distance, Fact<float> height) =>
        distance.TryKnown(out var forwards) && height.TryKnown(out var upwards) ? new Vector3(0, upwards, forwards) : Fact<Vector3>.Open;
}
