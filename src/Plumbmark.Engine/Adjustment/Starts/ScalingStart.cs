using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Start values by multidimensional scaling: all lengths at once, missing ones replaced by the shortest way round.</summary>
/// <remarks>
/// B = −½ C D² C, C the centring matrix; the places are the leading eigenvectors times the roots of their eigenvalues. Source: Torgerson 1952;
/// Borg and Groenen, Modern Multidimensional Scaling, 2nd ed., chapter 12 (from memory).
/// </remarks>
internal static class ScalingStart
{
    // Shortest ways cost n³.
    private const int LargestGraph = 300;

    public static double[]?[]? From(LengthGraph graph)
    {
        var points = Enumerable.Range(0, graph.Count).Where(i => graph.Edges[i].Count > 0).ToArray();
        if (points.Length is < 3 or > LargestGraph)
        {
            return null;
        }

        var b = Centred(ShortestWays(graph, points), points.Length);
        var axes = LeadingEigenvectors(b, points.Length, graph.Dimension);
        var places = new double[]?[graph.Count];
        for (var i = 0; i < points.Length; i++)
        {
            // Points in one line have fewer axes than the dimension; the others are zero.
            places[points[i]] = [.. Enumerable.Range(0, graph.Dimension).Select(k => k < axes.Length ? axes[k][i] : 0)];
        }

        return places;
    }

    private static double[] ShortestWays(LengthGraph graph, int[] points)
    {
        var n = points.Length;
        var index = points.Select((p, i) => (p, i)).ToDictionary(t => t.p, t => t.i);
        var d = new double[n * n];
        Array.Fill(d, double.PositiveInfinity);
        for (var i = 0; i < n; i++)
        {
            d[i * n + i] = 0;
            foreach (var edge in graph.Edges[points[i]])
            {
                d[i * n + index[edge.Other]] = Math.Min(d[i * n + index[edge.Other]], edge.Length);
            }
        }

        for (var k = 0; k < n; k++)
        {
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++)
                {
                    d[i * n + j] = Math.Min(d[i * n + j], d[i * n + k] + d[k * n + j]);
                }
            }
        }

        // Pieces without any length between them are put side by side.
        var longest = d.Where(double.IsFinite).Max();
        for (var i = 0; i < d.Length; i++)
        {
            d[i] = double.IsFinite(d[i]) ? d[i] : 2 * longest;
        }

        return d;
    }

    private static double[] Centred(double[] d, int n)
    {
        var b = d.Select(v => -0.5 * v * v).ToArray();
        var means = Enumerable.Range(0, n).Select(i => b.AsSpan(i * n, n).ToArray().Average()).ToArray();
        var mean = means.Average();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                b[i * n + j] += mean - means[i] - means[j];
            }
        }

        return b;
    }

    // Subspace iteration: start values need two or three digits.
    private static double[][] LeadingEigenvectors(double[] b, int n, int count)
    {
        const int EnoughRounds = 200;
        var axes = new double[count][];
        for (var k = 0; k < count; k++)
        {
            axes[k] = [.. Enumerable.Range(0, n).Select(i => Math.Sin((k + 1) * (i + 1) * 1.234))];
        }

        for (var round = 0; round < EnoughRounds; round++)
        {
            axes = [.. InnerConstraints.Orthonormal(axes).Select(axis => Times(b, n, axis))];
        }

        var lengths = axes.Select(a => Math.Sqrt(Dense.Norm(a))).ToArray();
        return [.. InnerConstraints.Orthonormal(axes).Select((a, k) => a.Select(v => v * lengths[k]).ToArray())];
    }

    private static double[] Times(double[] b, int n, double[] v)
    {
        var result = new double[n];
        for (var i = 0; i < n; i++)
        {
            result[i] = Dense.Dot(b.AsSpan(i * n, n), v);
        }

        return result;
    }
}
