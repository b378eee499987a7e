using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>The lengths of a network as a graph, in plan or in space, for finding start values.</summary>
internal sealed class LengthGraph
{
    /// <summary>A length to another point.</summary>
    [StructLayout(LayoutKind.Auto)]
    public readonly record struct Edge(int Other, double Length, double Sigma);

    /// <summary>2: all lengths are, or were reduced to, plan lengths. 3: lengths in space.</summary>
    public required int Dimension { get; init; }

    /// <summary>The lengths from each point.</summary>
    public required List<Edge>[] Edges { get; init; }

    /// <summary>Where a point is known to be (fixed, or believed beforehand), local metres; null where not.</summary>
    public required double[]?[] Known { get; init; }

    /// <summary>Where a point is sketched, local metres; null where not.</summary>
    public required double[]?[] Sketch { get; init; }

    public int Count => Edges.Length;

    /// <summary>Builds the graph; direct lengths are reduced to plan where both heights are known.</summary>
    public static LengthGraph Of(CompiledNetwork network, double?[] heights)
    {
        var isInSpace =
            !network.Rows.Any(r => r.Kind is RowKind.Plan or RowKind.Offset)
            && network.Rows.Any(r => r.Kind is RowKind.Direct && (heights[r.A] is null || heights[r.B] is null));
        var edges = new List<Edge>[network.Points.Length];
        for (var i = 0; i < edges.Length; i++)
        {
            edges[i] = [];
        }

        foreach (var row in network.Rows.Where(r => r.Kind is RowKind.Plan or RowKind.Direct))
        {
            var tool = row.Tool >= 0 ? network.Tools[row.Tool].Source : null;
            var length = (row.Value - (tool?.ZeroMetres ?? 0)) / (1 + (tool?.Scale ?? 0));
            if (row.Kind is RowKind.Direct && !isInSpace)
            {
                var rise = Height(network, heights, row.B) - Height(network, heights, row.A);
                length = Math.Sqrt(Math.Max(0, length * length - rise * rise));
            }

            edges[row.A].Add(new Edge(row.B, length, row.Sigma));
            edges[row.B].Add(new Edge(row.A, length, row.Sigma));
        }

        var dimension = isInSpace ? 3 : 2;
        return new LengthGraph
        {
            Dimension = dimension,
            Edges = edges,
            Known = [.. edges.Select((_, i) => Place(network, i, dimension, isKnown: true))],
            Sketch = [.. edges.Select((_, i) => Place(network, i, dimension, isKnown: false))],
        };
    }

    private static double Height(CompiledNetwork network, double?[] heights, int point) =>
        heights[point] ?? SketchStart.Known(network, point, Axis.Z) ?? 0;

    private static double[]? Place(CompiledNetwork network, int point, int dimension, bool isKnown)
    {
        var place = new double[dimension];
        for (var a = 0; a < dimension; a++)
        {
            var isFree = network.Source.Points[point].Of((Axis)a) is Coordinate.Free;
            if ((isKnown && isFree) || SketchStart.Known(network, point, (Axis)a) is not { } value)
            {
                return null;
            }

            place[a] = value;
        }

        return place;
    }
}
