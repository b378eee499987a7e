namespace Plumbmark.Inspection.Road;

/// <summary>Everything found minus drawn, in the order of <see cref="RoadParameters"/>, with its joint covariance and whether each was found at all.</summary>
internal sealed class RoadDeviations(MeasuredPlaces measured)
{
    private readonly (string Point, int Axis, double Sign)?[] _sources = new (string, int, double)?[RoadParameters.Count];

    /// <summary>Found minus drawn, metres and radians; zero where nothing was found.</summary>
    public double[] Amounts { get; } = new double[RoadParameters.Count];

    /// <summary>Joint covariance.</summary>
    public double[,] Covariance { get; } = new double[RoadParameters.Count, RoadParameters.Count];

    /// <summary>For what was not found: the standard uncertainty allowed for it; zero for what was found and for what nothing depends on.</summary>
    public double[] Allowed { get; } = new double[RoadParameters.Count];

    /// <summary>Which were found.</summary>
    public bool[] IsFound { get; } = new bool[RoadParameters.Count];

    /// <summary>Takes what the Floor found of one pick-up on one side.</summary>
    /// <param name="point">The frame point.</param>
    /// <param name="side">Its side; outboard is right on the right.</param>
    /// <param name="start">Where its three parameters begin.</param>
    public void TakePoint(string point, Side side, int start)
    {
        for (var axis = 0; axis < 3; axis++)
        {
            if (measured.Deviation(point, axis) is { } deviation)
            {
                var sign = side == Side.Right && axis == 1 ? -1.0 : 1.0;
                Amounts[start + axis] = sign * deviation;
                IsFound[start + axis] = true;
                _sources[start + axis] = (point, axis, sign);
            }
        }

        for (var i = start; i < start + 3; i++)
        {
            for (var j = 0; j < RoadParameters.Count; j++)
            {
                if (_sources[i] is { } a && _sources[j] is { } b)
                {
                    Covariance[i, j] = a.Sign * b.Sign * measured.Covariance((a.Point, a.Axis), (b.Point, b.Axis));
                    Covariance[j, i] = Covariance[i, j];
                }
            }
        }
    }

    /// <summary>Takes parts found off their drawing; what is told of a pick-up here stands instead of what the Floor found of it.</summary>
    public void Take(IEnumerable<PartDeviation> parts)
    {
        foreach (var part in parts)
        {
            if (RoadParameters.IsPickUp(part.Part))
            {
                Forget(RoadParameters.Of(part.Side, part.Part), 3);
            }

            foreach (var amount in part.Amounts)
            {
                var i = RoadParameters.Of(part.Side, part.Part, amount.Quantity);
                Amounts[i] += amount.Si;
                Covariance[i, i] += part.SigmaOf(amount) * part.SigmaOf(amount);
                IsFound[i] = true;
            }
        }
    }

    /// <summary>Adds what the adjusters do as they are fitted now.</summary>
    public void TakeFitted(IEnumerable<Adjuster> adjusters)
    {
        foreach (var adjuster in adjusters.Where(a => a.Fitted is not null))
        {
            AdjusterEffect.Add(adjuster, adjuster.Fitted!.Value.Metres, Amounts);
        }
    }

    /// <summary>Allows for what was not found, from one parameter on.</summary>
    public void Allow(int start, int count, Func<int, double> sigma)
    {
        for (var i = start; i < start + count; i++)
        {
            Allowed[i] = IsFound[i] ? 0 : sigma(i - start);
        }
    }

    /// <summary>Variance of a figure from what was found.</summary>
    public double FoundVariance(double[] slope)
    {
        var sum = 0.0;
        for (var i = 0; i < slope.Length; i++)
        {
            for (var j = 0; slope[i] != 0 && j < slope.Length; j++)
            {
                sum += slope[i] * Covariance[i, j] * slope[j];
            }
        }

        return Math.Max(0, sum);
    }

    /// <summary>Variance of a figure from what was not found and is allowed for.</summary>
    public double AllowedVariance(double[] slope)
    {
        var sum = 0.0;
        for (var i = 0; i < slope.Length; i++)
        {
            sum += slope[i] * slope[i] * Allowed[i] * Allowed[i];
        }

        return sum;
    }

    private void Forget(int start, int count)
    {
        for (var i = start; i < start + count; i++)
        {
            (Amounts[i], IsFound[i]) = (0, false);
            for (var j = 0; j < RoadParameters.Count; j++)
            {
                (Covariance[i, j], Covariance[j, i]) = (0, 0);
            }
        }
    }
}
