using System.Numerics;

namespace Condyle.Runtime.Tests.Gltf;

internal static class Near
{
    /// <summary>A file's matrix, column after column, against one of System.Numerics, which multiplies row vectors: the numbers lie in the same order.</summary>
    public static void AssertEqual(double[] columns, Matrix4x4 matrix, double tolerance)
    {
        for (var i = 0; i < 16; i++)
            Assert.True(Math.Abs(columns[i] - matrix[i / 4, i % 4]) <= tolerance, $"number {i} is {matrix[i / 4, i % 4]}, not {columns[i]}");
    }

    public static void AssertEqual(double[] expected, double[] actual, double tolerance, string? what = null)
    {
        for (var i = 0; i < 16; i++)
            Assert.True(Math.Abs(expected[i] - actual[i]) <= tolerance, $"{what} number {i} is {actual[i]}, not {expected[i]}");
    }
}
