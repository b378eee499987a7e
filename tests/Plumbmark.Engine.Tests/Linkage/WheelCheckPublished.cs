using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>
/// Castor by two turns, toe, set-back and diagonals. The figures are the project's own computation (exact rotation about the steering axis, the turn seen from above exactly 20 degrees);
/// the procedure is that of the US Navy training manual NAVEDTRA 14273, p. 339, fig. 8-57: turn 20 degrees in, zero, turn 20 out, read.
/// </summary>
public class WheelCheckPublished
{
    private const double Printed = 0.51e-6;

    [Theory]
    [InlineData(3, 0, 0, 1.026889, -1.026889, 3.002423, 2.999519)]
    [InlineData(3, 8, 0, 1.515081, -0.541005, 3.005797, 3.002775)]
    [InlineData(5, 8, 0, 2.204951, -1.226802, 5.016888, 5.003200)]
    [InlineData(5, 12, 0, 2.458625, -0.978126, 5.024194, 5.010212)]
    [InlineData(3, 8, 1.5, 3.020169, 0.956932, 3.016251, 3.011495)]
    [InlineData(-1, 7, 0.5, 0.582305, 1.267683, -1.001956, -1.001718)]
    [InlineData(10, 12, 0, 4.215229, -2.705299, 10.117135, 10.007095)]
    public void Castor_ByEachForm(
        double castor,
        double kingPin,
        double camber,
        double outCamber,
        double inCamber,
        double byDifference,
        double bySines
    )
    {
        var swing = new CastorSwing(Radians(camber), Radians(20), Radians(outCamber), Radians(20), Radians(inCamber));
        // Two cambers and the result carry six digits each; the forms multiply the cambers' rounding by 1.5.
        Assert.Equal(byDifference, Degrees(swing.ByDifference()), 4 * Printed);
        Assert.Equal(bySines, Degrees(swing.BySines()), 4 * Printed);
        var (exactCastor, exactKingPin) = swing.Exact();
        Assert.Equal(castor, Degrees(exactCastor), 4 * Printed);
        // King-pin inclination comes from the small bow of the curve, 1 - cos 20, which multiplies rounding by 17.
        Assert.Equal(kingPin, Degrees(exactKingPin), 17 * Printed);
    }

    /// <summary>King-pin inclination from the mean of both cambers over 1 - cos 20, own computation: 8.0759 for 8 degrees (castor 3), 12.2746 for 12 (castor 5).</summary>
    [Theory]
    [InlineData(1.515081, -0.541005, 8, 8.0759)]
    [InlineData(2.458625, -0.978126, 12, 12.2746)]
    public void KingPin_ByTheMean_IsHighByWhatItsFormCosts(double outCamber, double inCamber, double kingPin, double byMean)
    {
        var swing = new CastorSwing(0, Radians(20), Radians(outCamber), Radians(20), Radians(inCamber));
        Assert.Equal(byMean, Degrees(swing.KingPinByMean()), 0.51e-4);
        Assert.Equal(kingPin, Degrees(swing.Exact().KingPinRadians), 17 * Printed);
    }

    [Theory]
    [InlineData(20, 1.4619022)]
    [InlineData(15, 1.9318517)]
    [InlineData(10, 2.8793852)]
    public void Castor_ByDifference_HasThePrintedFactor(double turn, double factor)
    {
        var swing = new CastorSwing(0, Radians(turn), Radians(1), Radians(turn), 0);
        Assert.Equal(factor, swing.ByDifference() / Radians(1), 0.51e-7);
    }

    [Fact]
    public void Castor_ByTheShortForm_IsTwoPerCentLow()
    {
        var swing = new CastorSwing(0, Radians(20), Radians(1), Radians(20), Radians(-1));
        Assert.Equal(1.4324, swing.ByShortForm() / Radians(2), 0.00005);
        Assert.Equal(-0.020, (swing.ByShortForm() / swing.ByDifference()) - 1, 0.0005);
    }

    [Theory]
    [InlineData(0.125, 16, 0.447624)]
    [InlineData(0.0625, 16, 0.223812)]
    [InlineData(0.1875, 16, 0.671439)]
    public void TotalToe_InInchesAtTheRim(double behindMinusAheadInches, double diameterInches, double degrees) =>
        Assert.Equal(degrees, Degrees(RimReading.TotalToeIn(behindMinusAheadInches * 0.0254, diameterInches * 0.0254)), Printed);

    [Theory]
    [InlineData(2, 400, 0.286479)]
    [InlineData(3, 635, 0.270689)]
    public void TotalToe_InMillimetres(double behindMinusAhead, double diameter, double degrees)
    {
        Assert.Equal(degrees, Degrees(RimReading.TotalToeIn(behindMinusAhead / 1000, diameter / 1000)), Printed);
        Assert.Equal(
            behindMinusAhead,
            1000 * RimReading.BehindMinusAhead(RimReading.TotalToeIn(behindMinusAhead / 1000, diameter / 1000), diameter / 1000),
            1e-9
        );
    }

    [Fact]
    public void EighthOfAnInch_OnSixteen_IsNearlyTwentySevenMinutes() =>
        Assert.Equal(26.857, 60 * Degrees(RimReading.TotalToeIn(0.125, 16)), 0.0005);

    [Fact]
    public void OneDegreeOfCamber_OnAFifteenInchRim_Is0_26Inches() =>
        // Common practice: "1 deg = 0.26 in on 15 in".
        Assert.Equal(1, Degrees(RimReading.Camber(1, 1.26, 15)), 0.01);

    [Fact]
    public void SetBack_TenMillimetresOver1270()
    {
        var stance = CarStance.Of(At(2.245, 0.635), At(2.235, -0.635), At(0, 0.6), At(0, -0.6));
        Assert.Equal(0.451139, Degrees(stance.FrontSetBackRadians), Printed);
        Assert.Equal(10, 1000 * (stance.LeftWheelbaseMetres - stance.RightWheelbaseMetres), 1e-9);
    }

    [Fact]
    public void Diagonals_OfABay_ByTheSamePlaces()
    {
        // One rail 5 mm ahead: difference 2 L s / D; the whole end 5 mm sideways: half the width's share.
        double Difference(double frontAhead, double frontSideways)
        {
            var leftRail = new Vector3(2.4 + frontAhead, 0.4 + frontSideways, 0);
            var rightFront = new Vector3(2.4, -0.4 + frontSideways, 0);
            return Vector3.Distance(leftRail, new(0, -0.4, 0)) - Vector3.Distance(rightFront, new(frontAhead, 0.4, 0));
        }

        Assert.Equal(2529.822, 1000 * Vector3.Distance(new(2.4, 0.4, 0), new(0, -0.4, 0)), 0.0005);
        // The printed figures are first order.
        Assert.Equal(9.486831, 1000 * Difference(0.005, 0), 1e-4);
        Assert.Equal(3.162272, 1000 * Difference(0, 0.005), 1e-4);
    }

    private static WheelStance At(double x, double y) => new(new(x, y, 0), 0, 0);
}
