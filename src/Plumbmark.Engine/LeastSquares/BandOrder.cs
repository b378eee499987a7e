namespace Plumbmark.Engine.LeastSquares;

/// <summary>Orders the nodes of a graph so that neighbours stand near each other: reverse Cuthill-McKee.</summary>
/// <remarks>Source: George and Liu 1981, section 4.3 (from memory). Any order is correct; a good one is fast.</remarks>
internal static class BandOrder
{
    /// <summary>Position in the new order → node.</summary>
    /// <param name="neighbours">For each node the nodes it is joined to.</param>
    public static int[] Of(IReadOnlyList<IReadOnlyCollection<int>> neighbours)
    {
        var sorted = neighbours.Select(n => ByCount(n, neighbours)).ToArray();
        var order = new List<int>(sorted.Length);
        var isPlaced = new bool[sorted.Length];
        foreach (var seed in ByCount([.. Enumerable.Range(0, sorted.Length)], neighbours))
        {
            if (!isPlaced[seed])
            {
                var levels = Breadth(FarEnd(seed, sorted), sorted);
                order.AddRange(levels);
                foreach (var node in levels)
                {
                    isPlaced[node] = true;
                }
            }
        }

        order.Reverse();
        return [.. order];
    }

    // The fewest neighbours first; among as many, in the order of the nodes.
    private static int[] ByCount(IReadOnlyCollection<int> nodes, IReadOnlyList<IReadOnlyCollection<int>> neighbours)
    {
        var sorted = new int[nodes.Count];
        var keys = new long[nodes.Count];
        var next = 0;
        foreach (var node in nodes)
        {
            sorted[next] = node;
            keys[next++] = ((long)neighbours[node].Count << 32) + node;
        }

        Array.Sort(keys, sorted);
        return sorted;
    }

    // A node from which the graph is as long and thin as can be found: go to the last node reached, twice.
    private static int FarEnd(int seed, int[][] neighbours) => Breadth(Breadth(seed, neighbours)[^1], neighbours)[^1];

    private static List<int> Breadth(int seed, int[][] neighbours)
    {
        var reached = new List<int>(neighbours.Length) { seed };
        var isReached = new bool[neighbours.Length];
        isReached[seed] = true;
        for (var next = 0; next < reached.Count; next++)
        {
            foreach (var node in neighbours[reached[next]])
            {
                if (!isReached[node])
                {
                    isReached[node] = true;
                    reached.Add(node);
                }
            }
        }

        return reached;
    }
}
