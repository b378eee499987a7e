using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The free motions of a network made orthonormal: the constraints of the smallest trace.</summary>
internal static class InnerConstraints
{
    /// <summary>Orthonormal vectors that span the same motions.</summary>
    public static double[][] Orthonormal(double[][] directions) => Restricted(directions, null).G;

    /// <summary>
    /// The motions G combined so that their parts B on the datum's unknowns are orthonormal: Bᵀ G = I. Elsewhere B is zero.
    /// </summary>
    public static (double[][] G, double[][] B) Restricted(double[][] directions, IReadOnlySet<int>? datum)
    {
        var g = directions.Select(d => (double[])d.Clone()).ToArray();
        var b = directions.Select(d => d.Select((value, u) => datum?.Contains(u) is false ? 0 : value).ToArray()).ToArray();
        for (var k = 0; k < g.Length; k++)
        {
            // Twice, so that what cancels the first time is orthogonal the second.
            for (var pass = 0; pass < 2; pass++)
            {
                for (var j = 0; j < k; j++)
                {
                    var share = Dense.Dot(b[j], b[k]);
                    Dense.AddScaled(g[k], -share, g[j]);
                    Dense.AddScaled(b[k], -share, b[j]);
                }

                var norm = Dense.Norm(b[k]);
                Divide(g[k], norm);
                Divide(b[k], norm);
            }
        }

        return (g, b);
    }

    private static void Divide(double[] v, double norm)
    {
        for (var i = 0; i < v.Length; i++)
        {
            v[i] /= norm;
        }
    }
}
