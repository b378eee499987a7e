using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The free motions of a network made orthonormal: the constraints of the smallest trace.</summary>
internal static class InnerConstraints
{
    /// <summary>Orthonormal vectors that span the same motions.</summary>
    public static double[][] Orthonormal(double[][] directions) => Restricted(directions, null).G;

    /// <summary>
    /// The motions G combined so that their parts B on the datum's unknowns are orthonormal: Bᵀ G = I. Elsewhere B is zero. A motion that
    /// moves no unknown of the datum constrains nothing and is left out.
    /// </summary>
    public static (double[][] G, double[][] B) Restricted(double[][] directions, IReadOnlySet<int>? datum)
    {
        const double MovesNothing = 1e-12; // of its own length
        var (g, b) = (new List<double[]>(), new List<double[]>());
        foreach (var direction in directions)
        {
            var whole = (double[])direction.Clone();
            var part = direction.Select((value, u) => datum?.Contains(u) is false ? 0 : value).ToArray();
            var least = MovesNothing * Dense.Norm(direction);

            // Twice, so that what cancels the first time is orthogonal the second.
            for (var pass = 0; pass < 2; pass++)
            {
                for (var j = 0; j < b.Count; j++)
                {
                    var share = Dense.Dot(b[j], part);
                    Dense.AddScaled(whole, -share, g[j]);
                    Dense.AddScaled(part, -share, b[j]);
                }

                var norm = Dense.Norm(part);
                if (norm <= least)
                {
                    break;
                }

                Divide(whole, norm);
                Divide(part, norm);
                least = MovesNothing;
            }

            if (Dense.Norm(part) > 0.5)
            {
                g.Add(whole);
                b.Add(part);
            }
        }

        return ([.. g], [.. b]);
    }

    private static void Divide(double[] v, double norm)
    {
        for (var i = 0; i < v.Length; i++)
        {
            v[i] /= norm;
        }
    }
}
