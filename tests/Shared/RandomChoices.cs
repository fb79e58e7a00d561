using System.Numerics;

namespace Condyle.Tests.Shared;

/// <summary>Random choices that are the same for the same seed.</summary>
internal sealed class RandomChoices(int seed)
{
    private readonly Random random = new(seed);

    public bool Chance(double share) => random.NextDouble() < share;

    /// <summary>From 0 to one less than the number.</summary>
    public int Below(int count) => random.Next(count);

    public int Between(int least, int most) => random.Next(least, most + 1);

    public float Between(float least, float most) => least + ((most - least) * random.NextSingle());

    public T Of<T>(IReadOnlyList<T> items) => items[Below(items.Count)];

    /// <summary>Each component up to the size, both ways.</summary>
    public Vector3 Vector(float size) => new(Between(-size, size), Between(-size, size), Between(-size, size));

    public Vector3 Direction()
    {
        while (true)
        {
            var vector = Vector(1);
            if (vector.Length() is > 0.1f and < 1)
                return Vector3.Normalize(vector);
        }
    }

    /// <summary>A turn about any axis, up to an angle in radians.</summary>
    public Quaternion Turn(float most) => Quaternion.CreateFromAxisAngle(Direction(), Between(-most, most));
}
