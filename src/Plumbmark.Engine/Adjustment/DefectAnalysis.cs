using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Finds which points the readings leave floating when the rank is short of what the datum explains.</summary>
internal sealed class DefectAnalysis
{
    private readonly CompiledNetwork _network;
    private readonly double[] _x;
    private readonly double[][] _rigid;
    private readonly double[][] _global;
    private readonly double[][] _free;
    private readonly List<NetworkNode> _nodes;

    private DefectAnalysis(CompiledNetwork network, RigidMotions motions, double[] x, double[][] nullSpace)
    {
        _network = network;
        _x = x;
        _nodes = [.. NetworkNode.AllOf(network)];
        _rigid = [.. RigidMotions.All(network, x).Select(Unit)];
        _global = [.. motions.Displacements(network, x).Select(Unit)];
        _free = [.. nullSpace.Select(Extend).Concat(_global).Select(Unit)];
    }

    /// <summary>
    /// Analyses the null space that is left after the datum has been held. The reference is what holds together with the fixed points if
    /// there are any, else the largest body.
    /// </summary>
    /// <param name="network">The network.</param>
    /// <param name="motions">Its free motions.</param>
    /// <param name="x">The solution, or where the iteration stopped.</param>
    /// <param name="nullSpace">Undetermined directions by unknown.</param>
    public static (HashSet<NetworkNode> Reference, ConfigurationDefect Defect) Of(
        CompiledNetwork network,
        RigidMotions motions,
        double[] x,
        double[][] nullSpace
    )
    {
        var analysis = new DefectAnalysis(network, motions, x, nullSpace);
        var reference = analysis.FindReference();
        return (reference, analysis.Describe(reference, nullSpace));
    }

    private HashSet<NetworkNode> FindReference()
    {
        var isFixed = _nodes
            .Where(n => n.Axes.All(a => !_network.Points[n.Point].IsTouched[a] || _network.Points[n.Point].Unknown[a] < 0))
            .ToList();
        if (isFixed.Count > 0)
        {
            var body = new RigidBody(_global, _free, Entries);
            isFixed.ForEach(n => body.TryAdd(n));
            body.Grow(_nodes);
            return body.Nodes;
        }

        // Bodies do not overlap but in single points, so a node that is in one need not start another.
        var (best, seen) = (new HashSet<NetworkNode>(), new HashSet<NetworkNode>());
        foreach (var seed in _nodes.Where(n => !seen.Contains(n)))
        {
            var body = new RigidBody(_global, _free, Entries);
            body.TryAdd(seed);
            body.Grow(_nodes);
            seen.UnionWith(body.Nodes);
            best = body.Nodes.Count > best.Count ? body.Nodes : best;
            if (best.Count * 2 > _nodes.Count)
            {
                break;
            }
        }

        return best;
    }

    private ConfigurationDefect Describe(HashSet<NetworkNode> reference, double[][] nullSpace)
    {
        var loose = _nodes.Where(n => !reference.Contains(n)).ToList();
        var floating = loose
            .GroupBy(n => n.Point)
            .OrderBy(g => g.Key)
            .Select(g => new FloatingPoint(_network.Points[g.Key].Id, g.Any(n => !n.IsHeight), g.Any(n => n.IsHeight)))
            .ToList();
        return new ConfigurationDefect(nullSpace.Length, floating, Groups(loose), TieSearch.Of(_network, _x, loose, nullSpace));
    }

    private List<IReadOnlyList<string>> Groups(List<NetworkNode> loose)
    {
        var groups = new List<IReadOnlyList<string>>();
        var left = loose.ToList();
        while (left.Count > 0)
        {
            var body = new RigidBody(_rigid, _free, Entries);
            body.TryAdd(left[0]);
            body.Grow(left);
            body.Nodes.Add(left[0]);
            left.RemoveAll(body.Nodes.Contains);
            var names = body.Nodes.Select(n => n.Point).Distinct().Order().Select(i => _network.Points[i].Id).ToList();
            if (!groups.Any(g => g.SequenceEqual(names, StringComparer.Ordinal)))
            {
                groups.Add(names);
            }
        }

        return groups;
    }

    private IEnumerable<int> Entries(NetworkNode node) =>
        from axis in node.Axes
        where _network.Points[node.Point].IsTouched[axis]
        select RigidMotions.Entry(_network, node.Point, axis);

    private double[] Extend(double[] direction)
    {
        var extended = new double[_network.UnknownCount + 3 * _network.Points.Length];
        direction.CopyTo(extended, 0);
        return extended;
    }

    private static double[] Unit(double[] v)
    {
        var norm = Dense.Norm(v);
        return norm > 0 ? [.. v.Select(a => a / norm)] : v;
    }
}
