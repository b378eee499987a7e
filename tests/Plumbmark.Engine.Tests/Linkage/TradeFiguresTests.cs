using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>
/// What a difference does, as the trade tells it (common practice; own computation with these assumptions): joints 9 in apart, pivots 9 in apart, arms 11 in, steering lever 5.5 in, track rod 11 in, tyre 25.5 in. Figures
/// that do not follow from the assumptions are shown not to.
/// </summary>
public class TradeFiguresTests
{
    private const double Inch = 0.0254;
    private const double Tyre = 25.5;

    // Everything square: arms level, upright and wheel upright, lever straight back, rod level and square to it.
    private static readonly CornerPoints s_drawn = new()
    {
        UpperFront = In(4.5, 8, 15.5),
        UpperRear = In(-4.5, 8, 15.5),
        LowerFront = In(4.5, 8, 6.5),
        LowerRear = In(-4.5, 8, 6.5),
        UpperJoint = In(0, 19, 15.5),
        LowerJoint = In(0, 19, 6.5),
        TrackRodInner = In(-5.5, 8, 8),
        TrackRodOuter = In(-5.5, 19, 8),
        WheelCentre = In(0, 24, 11),
        SpinAxis = Vector3.Left,
    };

    [Theory]
    [InlineData(1.0 / 16, 0.4)]
    [InlineData(1.0 / 8, 0.8)]
    [InlineData(1.0 / 4, 1.6)]
    public void PickUpSideways_GivesCamber(double inches, double degrees)
    {
        Assert.Equal(
            degrees,
            Change(f => f with { UpperFront = f.UpperFront + Y(inches), UpperRear = f.UpperRear + Y(inches) }).Camber,
            0.05
        );
        Assert.Equal(
            -degrees,
            Change(f => f with { LowerFront = f.LowerFront + Y(inches), LowerRear = f.LowerRear + Y(inches) }).Camber,
            0.05
        );
    }

    [Fact]
    public void OneLowerPivotSkewedATenth_GivesCastorAndCamber()
    {
        var change = Change(f => f with { LowerRear = f.LowerRear - Y(0.10) });
        // "0.64 deg skew -> ball joint 0.12 in fore/aft -> castor ~0.8 deg; camber ~0.3 deg"
        Assert.Equal(0.64, Degrees(Math.Atan(0.10 / 9)), 0.005);
        Assert.Equal(0.12, Math.Abs(change.LowerJointForward) / Inch, 0.005);
        Assert.Equal(0.8, Math.Abs(change.Castor), 0.05);
        Assert.Equal(0.3, Math.Abs(change.Camber), 0.05);
    }

    [Fact]
    public void ShimOfAThirtySecond_OnBothBolts_GivesAFifthOfADegreeOfCamber() =>
        Assert.Equal(
            -0.2,
            Change(f => f with { UpperFront = f.UpperFront - Y(1.0 / 32), UpperRear = f.UpperRear - Y(1.0 / 32) }).Camber,
            0.01
        );

    [Fact]
    public void ShimOfAThirtySecond_OnOneBolt_GivesHalfADegreeOfCastorOnlyOnAShorterSpan()
    {
        // "one side: castor ~0.5 deg" (US shop manuals) does NOT follow from pivots 9 in apart: they give half of it. It takes bolts about 4.4 in apart.
        var castor = Math.Abs(Change(f => f with { UpperFront = f.UpperFront + Y(1.0 / 32) }).Castor);
        Assert.Equal(0.24, castor, 0.01);
        Assert.Equal(4.4, 9 * castor / 0.5, 0.1);
    }

    [Fact]
    public void ShimSwappedFrontToRear_GivesAQuarterDegreeOnlyOnALongerSpan()
    {
        // "1.6 mm front-to-rear swap: castor ~1/4 deg" (a saloon) does NOT follow either: these pivots give four times as much.
        var castor = Math.Abs(
            Change(f => f with { UpperFront = f.UpperFront + Y(1.6 / 25.4), UpperRear = f.UpperRear - Y(1.6 / 25.4) }).Castor
        );
        Assert.Equal(0.98, castor, 0.02);
    }

    [Fact]
    public void SteeringArmsEndASixteenthOff_GivesToe()
    {
        // "wheel 0.65 deg = 0.29 in toe at tread (trackable by track rod)"
        var drawnParts = CornerParts.Of(s_drawn);
        var toe = Degrees(
            WheelAngles
                .Of(
                    Stand(
                        new(CornerFrame.Of(s_drawn), drawnParts with { TrackRodMetres = drawnParts.TrackRodMetres + (Inch / 16) }),
                        11 * Inch
                    )
                )
                .ToeInRadians
        );
        Assert.Equal(0.65, Math.Abs(toe), 0.005);
        Assert.Equal(0.29, Tyre * Math.Sin(Radians(Math.Abs(toe))), 0.005);
    }

    [Fact]
    public void LeverPadAFifthOfAnInchWrong_GivesBumpSteer()
    {
        // "bump steer roughly 0.4 deg, 0.19 in toe in 2 in travel, one side (order of magnitude; 11 in rod)"
        var amounts = new double[CornerSensitivity.ParameterCount];
        amounts[(int)CornerParameter.LeverZ] = 0.22 * Inch;
        double Gain(ReadOnlySpan<double> by)
        {
            var corner = CornerVariation.Of(s_drawn, by).Corner;
            double Toe(double travel) => Degrees(WheelAngles.Of(Stand(corner, (11 + travel) * Inch)).ToeInRadians);
            return Toe(2) - Toe(0);
        }

        var gain = Math.Abs(Gain(amounts) - Gain(new double[CornerSensitivity.ParameterCount]));
        Assert.Equal(0.4, gain, 0.05);
        Assert.Equal(0.19, Tyre * Math.Sin(Radians(gain)), 0.02);
    }

    [Fact]
    public void RollOfTheBareFrame_IsAQuarterInchOverThirty()
    {
        // "Roll of bare frame 0.5 deg: 1/4 in height over 30 in; 8 in tower leans 0.07 in"
        Assert.Equal(0.25, 30 * Math.Sin(Radians(0.5)), 0.015);
        Assert.Equal(0.07, 8 * Math.Sin(Radians(0.5)), 0.001);
    }

    /// <summary>Of a bay measured crosswise between its marks: what a slide or a sideways move does to the difference of its diagonals, first order.</summary>
    [Theory]
    [InlineData("rail slid", 88, 30, 1.9)] // 2 L / D
    [InlineData("front sideways", 88, 30, 0.65)] // 2 W / D: plan diagonals of a long bay are weak on sidesway
    [InlineData("front sideways", 30, 24, 1.25)]
    public void Diagonals_OfABay_AnswerBy(string how, double length, double width, double times)
    {
        // An eighth: 0.24 in for the slid rail and 0.08 in for the sideways front of the long bay.
        const double S = 1.0 / 8;
        var (ahead, aside) = how == "rail slid" ? (S, 0.0) : (0.0, S);
        var (half, left, right) = (0.5 * width, length + ahead, length);
        // The left rail carries both its ends ahead; the front end carries both its corners aside.
        var leftFrontToRightRear = Vector3.Distance(In(left, half + aside, 0), In(0, -half, 0)) / Inch;
        var rightFrontToLeftRear = Vector3.Distance(In(right, -half + aside, 0), In(ahead, half, 0)) / Inch;
        Assert.Equal(times, (leftFrontToRightRear - rightFrontToLeftRear) / S, 0.01 * times);
    }

    [Fact]
    public void EdgeForCentre_OfASevenSixteenthsHole_IsHalfOfIt() =>
        Assert.Equal(0.22, Length.FromFraction(0, 7, 16, LengthUnit.Inch).Inches / 2, 0.005);

    /// <summary>Two lengths compared, each between two dropped marks: what two standard deviations leave after n repeats, lines lifted off between (0.5 mm a drop, 0.5 mm the tape).</summary>
    [Theory]
    [InlineData(1, 2.4, 0.10)]
    [InlineData(2, 1.7, 0.07)]
    [InlineData(3, 1.4, 0.06)]
    [InlineData(5, 1.1, 0.04)]
    public void NoiseOfLeftAgainstRight_FallsWithRepeats(int repeats, double millimetres, double inches)
    {
        // Only if every repeat drops both marks anew: tape repeats alone leave both drops, sqrt(2 x 0.5^2) of the 0.87 mm, as they were.
        var one = Math.Sqrt(3 * 0.25);
        var difference = 2 * Math.Sqrt(2.0 / repeats) * one;
        Assert.Equal(millimetres, difference, 0.05);
        Assert.Equal(inches, difference / 25.4, 0.005);
        var tapeAlone = 2 * Math.Sqrt(2 * ((2 * 0.25) + (0.25 / repeats)));
        Assert.True(tapeAlone >= 2, $"{tapeAlone} mm, however often the tape is read");
    }

    private static (double Camber, double Castor, double LowerJointForward) Change(Func<CornerFrame, CornerFrame> move)
    {
        var parts = CornerParts.Of(s_drawn);
        var (before, after) = (Stand(Corner.Of(s_drawn), 11 * Inch), Stand(new(move(CornerFrame.Of(s_drawn)), parts), 11 * Inch));
        var (a, b) = (WheelAngles.Of(before), WheelAngles.Of(after));
        return (
            Degrees(b.CamberRadians - a.CamberRadians),
            Degrees(b.CastorRadians - a.CastorRadians),
            after.LowerJoint.X - before.LowerJoint.X
        );
    }

    private static Vector3 In(double x, double y, double z) => new(x * Inch, y * Inch, z * Inch);

    private static Vector3 Y(double inches) => In(0, inches, 0);
}
