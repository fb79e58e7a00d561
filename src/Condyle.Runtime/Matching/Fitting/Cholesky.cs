namespace Condyle.Runtime.Matching.Fitting;

/// <summary>Solves linear equations whose matrix is symmetric and positive, by the product of a triangle and its transpose.</summary>
internal static class Cholesky
{
    /// <summary>The solution; none where the matrix isn't positive.</summary>
    public static double[]? Solve(double[,] matrix, double[] right)
    {
        var size = right.Length;
        var lower = new double[size, size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var left = matrix[row, column];
                for (var k = 0; k < column; k++)
                    left -= lower[row, k] * lower[column, k];
                if (column < row)
                    lower[row, column] = left / lower[column, column];
                else if (left > 0 && double.IsFinite(left))
                    lower[row, row] = Math.Sqrt(left);
                else
                    return null;
            }
        }

        var solved = new double[size];
        for (var row = 0; row < size; row++)
        {
            solved[row] = right[row];
            for (var k = 0; k < row; k++)
                solved[row] -= lower[row, k] * solved[k];
            solved[row] /= lower[row, row];
        }

        for (var row = size - 1; row >= 0; row--)
        {
            for (var k = row + 1; k < size; k++)
                solved[row] -= lower[k, row] * solved[k];
            solved[row] /= lower[row, row];
        }

        return solved;
    }
}
