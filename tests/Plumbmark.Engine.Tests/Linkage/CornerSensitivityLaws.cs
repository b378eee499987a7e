using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>The derivatives by virtual work against central differences of the closed-form solution, everywhere a corner can be.</summary>
public class CornerSensitivityLaws
{
    private static readonly string[] s_outcomes = ["camber", "toe-in", "castor", "king-pin", "forward", "outboard"];

    public static TheoryData<ArmMake, ArmMake, double, double> Cases =>
        new()
        {
            { ArmMake.TwoHalves, ArmMake.TwoHalves, 0, 0 },
            { ArmMake.TwoHalves, ArmMake.TwoHalves, 0.05, 0.02 },
            { ArmMake.OnePiece, ArmMake.OnePiece, -0.06, 0 },
            { ArmMake.OnePiece, ArmMake.TwoHalves, 0.03, -0.025 },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void SensitivityAt_EveryParameter_AgreesWithDifferences(ArmMake upper, ArmMake lower, double travel, double rack)
    {
        var drawn = Points with { UpperMake = upper, LowerMake = lower };
        // A car that is already off its drawing, by a few millimetres and milliradians, different for every parameter.
        var amounts = Enumerable.Range(0, CornerSensitivity.ParameterCount).Select(i => 0.004 * Math.Sin(1 + (3.7 * i))).ToArray();
        var height = drawn.WheelCentre.Z + travel;
        var steer = rack * Vector3.Left;
        var variation = CornerVariation.Of(drawn, amounts);
        var rows = Rows(variation.SensitivityAt(Stand(variation.Corner, height, variation.Corner.Frame.TrackRodInner + steer)));
        for (var parameter = 0; parameter < CornerSensitivity.ParameterCount; parameter++)
        {
            var difference = Difference(drawn, amounts, parameter, height, steer);
            for (var outcome = 0; outcome < 6; outcome++)
            {
                // Step 1e-5: its square times third derivatives of up to a few hundred; largest seen 4e-9.
                var off = Math.Abs(difference[outcome] - rows[outcome][parameter]);
                Assert.True(
                    off < 1e-7,
                    $"{s_outcomes[outcome]} by {(CornerParameter)parameter}: {rows[outcome][parameter]} but {difference[outcome]}"
                );
            }
        }
    }

    [Fact]
    public void SensitivityAt_MovingAllPickUpsForward_MovesTheWheelAndNoAngle()
    {
        var variation = CornerVariation.Of(Points, new double[CornerSensitivity.ParameterCount]);
        var rows = Rows(variation.SensitivityAt(Stand(variation.Corner, Points.WheelCentre.Z)));
        int[] forward = [0, 3, 6, 9, 12];
        double[] expected = [0, 0, 0, 0, 1, 0];
        Assert.All(rows.Zip(expected), pair => Assert.Equal(pair.Second, forward.Sum(i => pair.First[i]), 1e-10));
    }

    private static double[] Difference(CornerPoints drawn, double[] amounts, int parameter, double height, Vector3 steer)
    {
        const double Step = 1e-5;
        double[] At(double by)
        {
            double[] changed = [.. amounts];
            changed[parameter] += by;
            var corner = CornerVariation.Of(drawn, changed).Corner;
            var state = Stand(corner, height, corner.Frame.TrackRodInner + steer);
            var a = WheelAngles.Of(state);
            return [a.CamberRadians, a.ToeInRadians, a.CastorRadians, a.KingPinRadians, state.WheelCentre.X, state.WheelCentre.Y];
        }

        return At(Step).Zip(At(-Step), (more, less) => (more - less) / (2 * Step)).ToArray();
    }

    private static double[][] Rows(CornerSensitivity s) =>
        [
            s.Camber.ToArray(),
            s.ToeIn.ToArray(),
            s.Castor.ToArray(),
            s.KingPin.ToArray(),
            s.WheelForward.ToArray(),
            s.WheelOutboard.ToArray(),
        ];
}
