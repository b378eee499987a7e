using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// How far off its drawing something may be that nobody has measured, as a standard uncertainty. Without it a car with nothing measured would look perfectly known. Null values are the
/// usual ones: common practice, no source.
/// </summary>
/// <param name="Place">A coordinate of a pick-up on the frame; usually 1 mm.</param>
/// <param name="Part">A size of a part; usually half a millimetre.</param>
/// <param name="Angle">An angle on a part; usually 15 minutes.</param>
public sealed record UnmeasuredAllowance(Length? Place, Length? Part, Angle? Angle)
{
    // A track rod is screwed to length on assembly: until it is measured it may be anything within a few turns.
    private const double TrackRodMetres = 3e-3;

    /// <summary>The usual allowance.</summary>
    public static UnmeasuredAllowance Usual { get; } = new(null, null, null);

    internal void Allow(RoadDeviations deviations, bool hasFront, RearAxle? rear)
    {
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            if (hasFront)
            {
                deviations.Allow(RoadParameters.CornerStart(side), CornerSensitivity.ParameterCount, i => SigmaOf((CornerParameter)i));
            }

            if (rear is not null)
            {
                deviations.Allow(RoadParameters.RearStart(side), rear is RearAxle.Live ? 3 : 6, _ => PlaceSigma);
            }
        }
    }

    private double PlaceSigma => Place?.Metres ?? 1e-3;

    private double SigmaOf(CornerParameter parameter) =>
        parameter switch
        {
            <= CornerParameter.TrackRodInnerZ => PlaceSigma,
            CornerParameter.TrackRodLength => TrackRodMetres,
            CornerParameter.StubCamber or CornerParameter.StubToeIn => Angle?.Radians ?? 15.0 / 60 * Math.PI / 180,
            _ => Part?.Metres ?? 0.5e-3,
        };
}
