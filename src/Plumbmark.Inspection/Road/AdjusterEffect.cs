namespace Plumbmark.Inspection.Road;

/// <summary>What an adjuster moves, and which way.</summary>
internal static class AdjusterEffect
{
    /// <summary>Adds what an amount of an adjuster does to a row of <see cref="RoadParameters"/>.</summary>
    /// <param name="adjuster">The adjuster.</param>
    /// <param name="amountMetres">How much of it, from the drawn state.</param>
    /// <param name="theta">The row.</param>
    public static void Add(Adjuster adjuster, double amountMetres, Span<double> theta)
    {
        if (adjuster.Kind == AdjusterKind.TrackRod)
        {
            theta[RoadParameters.Of(adjuster.Side, CornerPart.TrackRod)] += amountMetres;
            return;
        }

        var (axis, sign) = adjuster.Direction switch
        {
            AdjusterDirection.Forward => (0, 1),
            AdjusterDirection.Rearward => (0, -1),
            AdjusterDirection.Out => (1, 1),
            AdjusterDirection.In => (1, -1),
            AdjusterDirection.Up => (2, 1),
            _ => (2, -1),
        };
        foreach (var place in adjuster.At)
        {
            theta[RoadParameters.Of(adjuster.Side, place) + axis] += sign * amountMetres;
        }
    }
}
