using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// A growing set of nodes that move only as one body: each motion the readings allow, restricted to the set, is one of the allowed rigid
/// motions.
/// </summary>
/// <remarks>
/// Each null motion is fitted by rigid motions over the set; a node belongs when the misfit stays nothing. Kept as normal equations, six by
/// six, so that trying a node costs little.
/// </remarks>
internal sealed class RigidBody
{
    // Null motions have unit length over all unknowns; a misfit of this square is a real motion, not rounding.
    private const double RealMotion = 1e-10;

    private readonly double[][] _rigid;
    private readonly double[][] _free;
    private readonly Func<NetworkNode, IEnumerable<int>> _entries;
    private double[] _gram;
    private double[][] _products;
    private double[] _squares;

    /// <summary>An empty body.</summary>
    /// <param name="rigid">The rigid motions it may make, each a displacement of every coordinate.</param>
    /// <param name="free">The motions that the readings allow, likewise.</param>
    /// <param name="entries">Where a node's coordinates stand in those displacements.</param>
    public RigidBody(double[][] rigid, double[][] free, Func<NetworkNode, IEnumerable<int>> entries)
    {
        (_rigid, _free, _entries) = (rigid, free, entries);
        _gram = new double[rigid.Length * rigid.Length];
        _products = [.. free.Select(_ => new double[rigid.Length])];
        _squares = new double[free.Length];
    }

    public HashSet<NetworkNode> Nodes { get; } = [];

    /// <summary>Adds a node when the body stays rigid with it.</summary>
    public bool TryAdd(NetworkNode node)
    {
        var before = (_gram, _products, _squares);
        Accumulate(node);
        if (IsRigid())
        {
            Nodes.Add(node);
            return true;
        }

        (_gram, _products, _squares) = before;
        return false;
    }

    /// <summary>Adds every candidate that fits, again and again until none does.</summary>
    public void Grow(IReadOnlyCollection<NetworkNode> candidates)
    {
        var hasGrown = true;
        while (hasGrown)
        {
            hasGrown = false;
            foreach (var node in candidates.Where(n => !Nodes.Contains(n)))
            {
                hasGrown |= TryAdd(node);
            }
        }
    }

    private void Accumulate(NetworkNode node)
    {
        var k = _rigid.Length;
        _gram = (double[])_gram.Clone();
        _products = [.. _products.Select(p => (double[])p.Clone())];
        _squares = (double[])_squares.Clone();
        foreach (var entry in _entries(node))
        {
            for (var a = 0; a < k; a++)
            {
                for (var b = 0; b < k; b++)
                {
                    _gram[a * k + b] += _rigid[a][entry] * _rigid[b][entry];
                }
            }

            for (var f = 0; f < _free.Length; f++)
            {
                var motion = _free[f][entry];
                _squares[f] += motion * motion;
                for (var a = 0; a < k; a++)
                {
                    _products[f][a] += motion * _rigid[a][entry];
                }
            }
        }
    }

    private bool IsRigid()
    {
        const double Undecided = 1e-12;
        var eigen = SymmetricEigen.Of(_gram, _rigid.Length);
        for (var f = 0; f < _free.Length; f++)
        {
            var misfit = _squares[f];
            for (var a = 0; a < _rigid.Length && eigen.Values[a] > Undecided * eigen.Values[0]; a++)
            {
                var share = Dense.Dot(eigen.Vectors[a], _products[f]);
                misfit -= share * share / eigen.Values[a];
            }

            if (misfit > RealMotion)
            {
                return false;
            }
        }

        return true;
    }
}
