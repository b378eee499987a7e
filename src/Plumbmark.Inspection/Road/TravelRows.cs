namespace Plumbmark.Inspection.Road;

/// <summary>A wheel's way through its travel as rows of a table, for page and terminal alike.</summary>
public static class TravelRows
{
    /// <summary>
    /// Every other of the curve's points: travel, camber, toe-in, castor, king-pin inclination, half track, forward, scrub radius, trail, height of the
    /// roll centre.
    /// </summary>
    /// <param name="curve">The curve.</param>
    /// <param name="display">How numbers are shown.</param>
    /// <param name="untold">What stands where a length is not known.</param>
    public static IReadOnlyList<IReadOnlyList<string>> Of(IReadOnlyList<CurvePoint> curve, RoadDisplay display, string untold)
    {
        string Length(double? metres) => metres is { } m ? display.SignedLength(m) : untold;
        return
        [
            .. curve
                .Where((_, i) => i % 2 == 0)
                .Select(p =>
                    (IReadOnlyList<string>)
                        [
                            Length(p.TravelMetres),
                            RoadDisplay.Signed(p.Camber),
                            RoadDisplay.Signed(p.ToeIn),
                            RoadDisplay.Signed(p.Castor),
                            RoadDisplay.Signed(p.KingPin),
                            Length(p.OutboardMetres),
                            Length(p.ForwardMetres),
                            Length(p.ScrubRadiusMetres),
                            Length(p.TrailMetres),
                            Length(p.RollCentreMetres),
                        ]
                ),
        ];
    }
}
