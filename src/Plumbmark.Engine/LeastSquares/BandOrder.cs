namespace Plumbmark.Engine.LeastSquares;

/// <summary>Orders the nodes of a graph so that neighbours stand near each other: reverse Cuthill-McKee.</summary>
/// <remarks>Source: George and Liu 1981, section 4.3 (from memory). Any order is correct; a good one is fast.</remarks>
internal static class BandOrder
{
    /// <summary>Position in the new order → node.</summary>
    /// <param name="neighbours">For each node the nodes it is joined to.</param>
    public static int[] Of(IReadOnlyList<IReadOnlyCollection<int>> neighbours)
    {
        var order = new List<int>(neighbours.Count);
        var isPlaced = new bool[neighbours.Count];
        foreach (var seed in Enumerable.Range(0, neighbours.Count).OrderBy(i => neighbours[i].Count))
        {
            if (!isPlaced[seed])
            {
                var levels = Breadth(FarEnd(seed, neighbours), neighbours);
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

    // A node from which the graph is as long and thin as can be found: go to the last node reached, twice.
    private static int FarEnd(int seed, IReadOnlyList<IReadOnlyCollection<int>> neighbours) =>
        Breadth(Breadth(seed, neighbours)[^1], neighbours)[^1];

    private static List<int> Breadth(int seed, IReadOnlyList<IReadOnlyCollection<int>> neighbours)
    {
        var reached = new List<int> { seed };
        var isReached = new HashSet<int> { seed };
        for (var next = 0; next < reached.Count; next++)
        {
            foreach (var node in neighbours[reached[next]].OrderBy(i => neighbours[i].Count).ThenBy(i => i))
            {
                if (isReached.Add(node))
                {
                    reached.Add(node);
                }
            }
        }

        return reached;
    }
}
