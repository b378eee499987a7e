using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The free motions of a network made orthonormal: the constraints of the smallest trace.</summary>
internal static class InnerConstraints
{
    /// <summary>Orthonormal vectors that span the same motions.</summary>
    public static double[][] Orthonormal(double[][] directions)
    {
        var result = directions.Select(d => (double[])d.Clone()).ToArray();
        for (var k = 0; k < result.Length; k++)
        {
            // Twice, so that what cancels the first time is orthogonal the second.
            for (var pass = 0; pass < 2; pass++)
            {
                for (var j = 0; j < k; j++)
                {
                    Dense.AddScaled(result[k], -Dense.Dot(result[j], result[k]), result[j]);
                }

                var norm = Dense.Norm(result[k]);
                for (var i = 0; i < result[k].Length; i++)
                {
                    result[k][i] /= norm;
                }
            }
        }

        return result;
    }
}
