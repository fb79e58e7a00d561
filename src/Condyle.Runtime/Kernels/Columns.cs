using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Vectors as a structure of arrays: one array a component.</summary>
internal sealed class Vectors(int count)
{
    private readonly float[] x = new float[count];
    private readonly float[] y = new float[count];
    private readonly float[] z = new float[count];

    public int Count => x.Length;

    public Vector3 this[int index]
    {
        get => new(x[index], y[index], z[index]);
        set => (x[index], y[index], z[index]) = (value.X, value.Y, value.Z);
    }

    public void CopyFrom(Vectors other)
    {
        other.x.CopyTo(x, 0);
        other.y.CopyTo(y, 0);
        other.z.CopyTo(z, 0);
    }
}

/// <summary>Rotations as a structure of arrays: one array a component.</summary>
internal sealed class Rotations(int count)
{
    private readonly float[] x = new float[count];
    private readonly float[] y = new float[count];
    private readonly float[] z = new float[count];
    private readonly float[] w = new float[count];

    public int Count => x.Length;

    public Quaternion this[int index]
    {
        get => new(x[index], y[index], z[index], w[index]);
        set => (x[index], y[index], z[index], w[index]) = (value.X, value.Y, value.Z, value.W);
    }

    public void CopyFrom(Rotations other)
    {
        other.x.CopyTo(x, 0);
        other.y.CopyTo(y, 0);
        other.z.CopyTo(z, 0);
        other.w.CopyTo(w, 0);
    }
}

/// <summary>Frames as a structure of arrays: one array a component.</summary>
internal sealed class Affines(int count)
{
    private readonly Vectors x = new(count);
    private readonly Vectors y = new(count);
    private readonly Vectors z = new(count);
    private readonly Vectors origin = new(count);

    public int Count => origin.Count;

    public Affine this[int index]
    {
        get => new(x[index], y[index], z[index], origin[index]);
        set => (x[index], y[index], z[index], origin[index]) = (value.X, value.Y, value.Z, value.Origin);
    }

    public void CopyFrom(Affines other)
    {
        x.CopyFrom(other.x);
        y.CopyFrom(other.y);
        z.CopyFrom(other.z);
        origin.CopyFrom(other.origin);
    }
}
