namespace Plumbmark.Inspection.Road;

/// <summary>How one figure is made from the basic numbers of <see cref="RoadKinematics"/>.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Side">Of which side; null for the car. For the outer wheel's turn: the side of the inner wheel.</param>
/// <param name="Terms">The basic numbers it needs, each with its share. The figure is their sum S, unless it is of a line.</param>
/// <param name="AcrossTerms">For the angle of a line: the length A across it; the figure is then atan2(S, A). Null for a plain sum.</param>
/// <param name="TurnTerms">For a place seen along a line turned by the angle t: the figure is then S cos t - A sin t. Null otherwise.</param>
internal sealed record FigureFormula(
    FigureKind Kind,
    Side? Side,
    (int Basic, double Share)[] Terms,
    (int Basic, double Share)[]? AcrossTerms = null,
    (int Basic, double Share)[]? TurnTerms = null
)
{
    /// <summary>Every figure, in the order of an answer.</summary>
    public static IReadOnlyList<FigureFormula> All { get; } = [.. Build()];

    /// <summary>The figure, radians or metres; not a number when something it needs is not known.</summary>
    public double Of(ReadOnlySpan<double> basics)
    {
        var sum = Sum(Terms, basics);
        if (AcrossTerms is null)
        {
            return sum;
        }

        var across = Sum(AcrossTerms, basics);
        if (TurnTerms is null)
        {
            return Math.Atan2(sum, across);
        }

        var (sine, cosine) = Math.SinCos(Sum(TurnTerms, basics));
        return (cosine * sum) - (sine * across);
    }

    /// <summary>Its slope over the parameters.</summary>
    /// <param name="basics">The basic numbers where the slope is wanted.</param>
    /// <param name="slopes">The slopes of the basic numbers there.</param>
    public double[] Slope(ReadOnlySpan<double> basics, double[][] slopes)
    {
        var slope = new double[RoadParameters.Count];
        if (AcrossTerms is null)
        {
            Add(Terms, 1, slopes, slope);
            return slope;
        }

        var (s, a) = (Sum(Terms, basics), Sum(AcrossTerms, basics));
        if (TurnTerms is not null)
        {
            // d (s cos t - a sin t) = cos t ds - sin t da - (s sin t + a cos t) dt
            var (sine, cosine) = Math.SinCos(Sum(TurnTerms, basics));
            Add(Terms, cosine, slopes, slope);
            Add(AcrossTerms, -sine, slopes, slope);
            Add(TurnTerms, -((s * sine) + (a * cosine)), slopes, slope);
            return slope;
        }

        // d atan2(s, a) = (a ds - s da) / (s^2 + a^2)
        var square = (s * s) + (a * a);
        Add(Terms, a / square, slopes, slope);
        Add(AcrossTerms, -s / square, slopes, slope);
        return slope;
    }

    private static double Sum((int Basic, double Share)[] terms, ReadOnlySpan<double> basics)
    {
        var sum = 0.0;
        foreach (var (basic, share) in terms)
        {
            sum += share * basics[basic];
        }

        return sum;
    }

    private static void Add((int Basic, double Share)[] terms, double scale, double[][] slopes, double[] to)
    {
        foreach (var (basic, share) in terms)
        {
            for (var i = 0; i < to.Length; i++)
            {
                to[i] += scale * share * slopes[basic][i];
            }
        }
    }

    private static IEnumerable<FigureFormula> Build()
    {
        (int, double) L(Basic b, double share = 1) => (RoadKinematics.Index(Road.Side.Left, b), share);
        (int, double) R(Basic b, double share = 1) => (RoadKinematics.Index(Road.Side.Right, b), share);
        IEnumerable<FigureFormula> Each(FigureKind kind, params (Basic Basic, double Share)[] terms) =>
            [
                new(kind, Road.Side.Left, [.. terms.Select(t => L(t.Basic, t.Share))]),
                new(kind, Road.Side.Right, [.. terms.Select(t => R(t.Basic, t.Share))]),
            ];

        return
        [
            .. Each(FigureKind.Camber, (Basic.Camber, 1)),
            .. Each(FigureKind.Castor, (Basic.Castor, 1)),
            .. Each(FigureKind.KingPin, (Basic.KingPin, 1)),
            .. Each(FigureKind.ToeIn, (Basic.ToeIn, 1)),
            new(FigureKind.ToeIn, null, [L(Basic.ToeIn), R(Basic.ToeIn)]),
            new(FigureKind.CamberSplit, null, [L(Basic.Camber), R(Basic.Camber, -1)]),
            new(FigureKind.CastorSplit, null, [L(Basic.Castor), R(Basic.Castor, -1)]),
            .. Each(FigureKind.BumpSteer, (Basic.BumpToeIn, 1), (Basic.ToeIn, -1)),
            .. Each(FigureKind.ToeOutOnTurns, (Basic.OuterTurn, 1)),
            .. Each(FigureKind.RearCamber, (Basic.RearCamber, 1)),
            new(FigureKind.RearToeIn, null, [L(Basic.RearToeIn), R(Basic.RearToeIn)]),
            // The thrust line halves the rear wheels' headings: -toe-in on the left, +toe-in on the right.
            new(FigureKind.Thrust, null, [L(Basic.RearToeIn, -0.5), R(Basic.RearToeIn, 0.5)]),
            new(
                FigureKind.SetBack,
                null,
                [L(Basic.WheelForward), R(Basic.WheelForward, -1)],
                [L(Basic.WheelOutboard), R(Basic.WheelOutboard)]
            ),
            .. Each(FigureKind.Wheelbase, (Basic.WheelForward, 1), (Basic.RearForward, -1)),
            new(
                FigureKind.WheelbaseSplit,
                null,
                [L(Basic.WheelForward), L(Basic.RearForward, -1), R(Basic.WheelForward, -1), R(Basic.RearForward)]
            ),
            new(FigureKind.FrontTrack, null, [L(Basic.WheelOutboard), R(Basic.WheelOutboard)]),
            new(FigureKind.RearTrack, null, [L(Basic.RearOutboard), R(Basic.RearOutboard)]),
            new(FigureKind.RearOffset, null, [L(Basic.RearOutboard, 0.5), R(Basic.RearOutboard, -0.5)]),
            // From the front wheels' middle to the rear wheels' middle, seen along the thrust line: CarStance.DogTrackMetres.
            new(
                FigureKind.DogTrack,
                null,
                [L(Basic.RearOutboard, 0.5), R(Basic.RearOutboard, -0.5), L(Basic.WheelOutboard, -0.5), R(Basic.WheelOutboard, 0.5)],
                [L(Basic.RearForward, 0.5), R(Basic.RearForward, 0.5), L(Basic.WheelForward, -0.5), R(Basic.WheelForward, -0.5)],
                [L(Basic.RearToeIn, -0.5), R(Basic.RearToeIn, 0.5)]
            ),
        ];
    }
}
