namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// Which unknowns are solved for, and in which order: neighbours near each other, tools last, held coordinates not at all.
/// </summary>
internal sealed class UnknownOrder
{
    private UnknownOrder(int[] position, int count) => (Position, Count) = (position, count);

    /// <summary>For each unknown its position in the factor, −1 when it is held where it is.</summary>
    public int[] Position { get; }

    /// <summary>Number of unknowns solved for.</summary>
    public int Count { get; }

    /// <summary>Orders the unknowns of a network, leaving out the held ones.</summary>
    public static UnknownOrder Of(CompiledNetwork network, IReadOnlyCollection<int> held)
    {
        var position = new int[network.UnknownCount];
        Array.Fill(position, -1);
        var isHeld = new bool[network.UnknownCount];
        foreach (var unknown in held)
        {
            isHeld[unknown] = true;
        }

        var next = 0;
        void Place(int unknown)
        {
            if (unknown >= 0 && !isHeld[unknown])
            {
                position[unknown] = next++;
            }
        }

        foreach (var index in network.PointOrder)
        {
            var point = network.Points[index];
            Array.ForEach(point.Unknown, Place);
            if (point.DropError >= 0)
            {
                Place(point.DropError);
                Place(point.DropError + 1);
            }
        }

        foreach (var tool in network.Tools)
        {
            Place(tool.Zero);
            Place(tool.Scale);
        }

        return new UnknownOrder(position, next);
    }

    /// <summary>For each position the lowest position that shares a row with it: the envelope of the normal matrix.</summary>
    public int[] Envelope(CompiledNetwork network)
    {
        var first = new int[Count];
        for (var i = 0; i < Count; i++)
        {
            first[i] = i;
        }

        for (var row = 0; row < network.RowCount; row++)
        {
            var columns = network.ColumnsOf(row);
            var lowest = Count;
            foreach (var column in columns)
            {
                lowest = column >= 0 && Position[column] >= 0 ? Math.Min(lowest, Position[column]) : lowest;
            }

            foreach (var column in columns)
            {
                if (column >= 0 && Position[column] >= 0)
                {
                    first[Position[column]] = Math.Min(first[Position[column]], lowest);
                }
            }
        }

        return first;
    }
}
