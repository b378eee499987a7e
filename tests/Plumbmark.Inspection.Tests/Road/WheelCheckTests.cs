using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Tests.Road;

public class WheelCheckTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void Strings_WithUnequalTracksAndASkewedBox_FindEveryWheel()
    {
        // A car known exactly: rear track 60 mm narrower, thrust 0.2 degrees left, front toe-in 0.3 and 0.1, standing askew between strings that converge by 4 mm.
        var readings = StringsRoundACar(
            lean: 0.004,
            converge: 0.004,
            frontToe: (0.3 * Degree, 0.1 * Degree),
            rearToe: (-0.25 * Degree, 0.15 * Degree)
        );
        var results = Check(readings);
        Assert.Equal(0.3, Wheel(results, FigureKind.ToeIn, WheelPlace.FrontLeft).Value / Degree, 1e-3);
        Assert.Equal(0.1, Wheel(results, FigureKind.ToeIn, WheelPlace.FrontRight).Value / Degree, 1e-3);
        Assert.Equal(-0.25, Wheel(results, FigureKind.RearToeIn, WheelPlace.RearLeft).Value / Degree, 1e-3);
        Assert.Equal(0.4, Pair(results, FigureKind.ToeIn).Value / Degree, 1e-3);
        Assert.Equal(-0.1, Pair(results, FigureKind.RearToeIn).Value / Degree, 1e-3);
        Assert.Equal(0.2, results.Single(r => r.Kind == FigureKind.Thrust).Value / Degree, 1e-3);
    }

    [Fact]
    public void HalfTurns_TakeTheRunOutOut()
    {
        // A rim that runs out by 3 mm reads 0.45 degrees too much, then too little.
        WheelReading[] readings =
        [
            new WheelReading.PlumbLine("a", WheelPlace.FrontLeft, Mm(50), Mm(56.3), Mm(380)),
            new WheelReading.PlumbLine("b", WheelPlace.FrontLeft, Mm(50), Mm(50.3), Mm(380)) { HalfTurn = true },
        ];
        // On pads that were read, so that the floor's own lean is not in it.
        WheelReading[] pads =
        [
            new WheelReading.Pad("pl", WheelPlace.FrontLeft, Mm(0)),
            new WheelReading.Pad("pr", WheelPlace.FrontRight, Mm(0)),
        ];
        var track = Track(1400);
        var camber = Wheel(Check([.. pads, .. readings], track), FigureKind.Camber, WheelPlace.FrontLeft);
        Assert.Equal(Math.Asin(3.3 / 380) / Degree, camber.Value / Degree, 1e-3);
        Assert.Contains(camber.Remarks, r => r.Contains("is taken out by the half turn", StringComparison.Ordinal));
        var once = Wheel(Check([.. pads, .. readings[..1]], track), FigureKind.Camber, WheelPlace.FrontLeft);
        Assert.True(once.U > 1.5 * camber.U);
        Assert.Contains(once.Remarks, r => r.StartsWith("Read in one position only", StringComparison.Ordinal));
    }

    [Fact]
    public void Pads_CorrectEachSideTheOtherWay()
    {
        // The left pad 10 mm high under a 1400 mm track leans the axle to the right by 0.409 degrees: the left wheel reads too little camber, the right too much.
        WheelReading[] readings =
        [
            new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(0.1m)),
            new WheelReading.Level("r", WheelPlace.FrontRight, Angle.FromDegrees(0.9m)),
            new WheelReading.Pad("pl", WheelPlace.FrontLeft, Mm(10)),
            new WheelReading.Pad("pr", WheelPlace.FrontRight, Mm(0)),
        ];
        var track = Track(1400);
        var results = Check(readings, track);
        Assert.Equal(0.1 + 0.4092, Wheel(results, FigureKind.Camber, WheelPlace.FrontLeft).Value / Degree, 1e-3);
        Assert.Equal(0.9 - 0.4092, Wheel(results, FigureKind.Camber, WheelPlace.FrontRight).Value / Degree, 1e-3);
    }

    [Fact]
    public void GoodCar_OnAFloorThatFallsADegree_IsNotCalledOut()
    {
        // Camber 0°30' on both wheels, allowed 0° to 1°; the floor leans the car by a degree to the right, and nobody read the pads.
        WheelReading[] readings =
        [
            new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(-0.5m)),
            new WheelReading.Level("l2", WheelPlace.FrontLeft, Angle.FromDegrees(-0.5m)) { HalfTurn = true },
            new WheelReading.Level("r", WheelPlace.FrontRight, Angle.FromDegrees(1.5m)),
            new WheelReading.Level("r2", WheelPlace.FrontRight, Angle.FromDegrees(1.5m)) { HalfTurn = true },
        ];
        static FigureAmount.OfAngle Degrees(decimal degrees) => new(Angle.FromDegrees(degrees));
        var book = new AskedFigure(FigureKind.Camber, null, null, Degrees(0), Degrees(1), LimitSource.Factory, null);
        var split = new AskedFigure(FigureKind.CamberSplit, null, Degrees(0.5m), null, null, LimitSource.Factory, null);
        var results = Check(readings, book, split);
        Assert.All(results, r => Assert.Equal(Verdict.CannotTellYet, r.Verdict));
        var left = Wheel(results, FigureKind.Camber, WheelPlace.FrontLeft);
        // Two readings good to 0.1 degrees, and a floor that may fall 1 in 60 either way.
        Assert.Equal(Math.Sqrt((0.1 * 0.1 / 2) + Math.Pow(1.0 / 60 / Math.Sqrt(3) / Degree, 2)), left.U / Degree, 1e-3);
        Assert.Contains(left.Remarks, r => r.StartsWith("The pads were not read: ±1°06' of it", StringComparison.Ordinal));
        // The lean makes one larger and the other smaller, so it is in their difference twice.
        var own = Math.Sqrt(2 * 0.1 * 0.1 / 2);
        var lean = 2 / 60.0 / Math.Sqrt(3) / Degree;
        Assert.Equal(Math.Sqrt((own * own) + (lean * lean)), results.Single(r => r.Kind == FigureKind.CamberSplit).U / Degree, 1e-3);
    }

    [Fact]
    public void PadsReadWithoutATrack_AreNotCorrected_ButCountInFull()
    {
        WheelReading[] readings =
        [
            new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(0.5m)),
            new WheelReading.Pad("pl", WheelPlace.FrontLeft, Mm(40)),
            new WheelReading.Pad("pr", WheelPlace.FrontRight, Mm(0)),
        ];
        var camber = Wheel(Check(readings), FigureKind.Camber, WheelPlace.FrontLeft);
        Assert.Equal(0.5, camber.Value / Degree, 1e-6);
        Assert.True(camber.U >= 0.040);
        Assert.Contains(camber.Remarks, r => r.StartsWith("The track is not told", StringComparison.Ordinal));
    }

    [Fact]
    public void SplitOfReadPads_CarriesTheirLeanTwice()
    {
        WheelReading[] readings =
        [
            new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(0.1m)),
            new WheelReading.Level("r", WheelPlace.FrontRight, Angle.FromDegrees(0.9m)),
            new WheelReading.Pad("pl", WheelPlace.FrontLeft, Mm(10)) { Sigma = Mm(5) },
            new WheelReading.Pad("pr", WheelPlace.FrontRight, Mm(0)) { Sigma = Mm(5) },
        ];
        var track = Track(1400);
        var results = Check(readings, track);
        var (left, right) = (
            Wheel(results, FigureKind.Camber, WheelPlace.FrontLeft).U,
            Wheel(results, FigureKind.Camber, WheelPlace.FrontRight).U
        );
        var lean = 5 * Math.Sqrt(2) / 1400;
        var own =
            Math.Sqrt((left * left) - (lean * lean)) is var l && Math.Sqrt((right * right) - (lean * lean)) is var r
                ? (l * l) + (r * r)
                : 0;
        Assert.Equal(Math.Sqrt(own + (4 * lean * lean)), results.Single(x => x.Kind == FigureKind.CamberSplit).U, 1e-9);
    }

    [Fact]
    public void Swing_GivesTheExactCastor_AndSaysWhatTheShortFormCosts()
    {
        // 5 degrees castor, 12 of king-pin inclination (own computation): 2.458625 and -0.978126 at 20 degrees.
        var swing = new WheelReading.Swing(
            "s",
            WheelPlace.FrontRight,
            Angle.FromDegrees(0),
            Angle.FromDegrees(20),
            Angle.FromDegrees(2.458625m),
            Angle.FromDegrees(20),
            Angle.FromDegrees(-0.978126m)
        );
        var results = Check([swing]);
        var castor = Wheel(results, FigureKind.Castor, WheelPlace.FrontRight);
        Assert.Equal(5, castor.Value / Degree, 1e-5);
        Assert.Equal(12, Wheel(results, FigureKind.KingPin, WheelPlace.FrontRight).Value / Degree, 2e-5);
        // 1.4324 x 3.436751 = 4.923: 4°55'.
        Assert.Contains(castor.Remarks, r => r.Contains("would say +4°55'", StringComparison.Ordinal));
        // A level good to 0.1 degrees: sqrt 2 x 0.1 / (2 sin 20) = 0.21 degrees, a little more for the turn's own marks.
        Assert.InRange(castor.U / Degree, 0.2, 0.3);
    }

    [Fact]
    public void Across_GivesToeAgainstTheBook_AtItsDiameter()
    {
        var book = new AskedFigure(FigureKind.ToeIn, Toe(1.6), Toe(1.6), null, null, LimitSource.Factory, "page 31");
        WheelReading[] readings =
        [
            new WheelReading.Across("a", Axle.Front, Mm(1200), Mm(1208), Mm(400), false),
            new WheelReading.Across("b", Axle.Front, Mm(1200), Mm(1208), Mm(400), false) { HalfTurn = true },
        ];
        var toe = Pair(Check(readings, book), FigureKind.ToeIn);
        // 8 mm on 400: 2 asin(8 / 800) = 1.14594 degrees.
        Assert.Equal(1.14594, toe.Value / Degree, 1e-5);
        Assert.Equal(Verdict.Out, toe.Verdict);
        Assert.Contains(
            toe.Remarks,
            r => r.Contains("8 mm toe-in at 400", StringComparison.Ordinal) || r.Contains("8.0 mm toe-in at 400", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void RideHeightsAndWheelbases_AreComparedSideWithSide()
    {
        WheelReading[] readings =
        [
            new WheelReading.RideHeight("h1", WheelPlace.RearLeft, Mm(301)),
            new WheelReading.RideHeight("h2", WheelPlace.RearRight, Mm(292)),
            new WheelReading.Wheelbase("w1", Side.Left, Mm(2210)),
            new WheelReading.Wheelbase("w2", Side.Right, Mm(2204)),
        ];
        var results = Check(readings);
        Assert.Equal(0.009, results.Single(r => r is { Kind: FigureKind.RideHeightSplit, Axle: Axle.Rear }).Value, 1e-9);
        Assert.Equal(0.006, results.Single(r => r.Kind == FigureKind.WheelbaseSplit).Value, 1e-9);
        Assert.All(results, r => Assert.Null(r.Verdict));
    }

    [Fact]
    public void ReadingsTakenBack_DoNotCount() =>
        Assert.Empty(Check([new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(1)) { Withdrawn = "tyre flat" }]));

    private static FigureAmount.OfToe Toe(double millimetres) => new(Mm(millimetres), Mm(400));

    private static IReadOnlyList<WheelResult> Check(IReadOnlyList<WheelReading> readings, params AskedFigure[] book) =>
        WheelCheck
            .Of(RoadSection.Empty with { Wheels = [.. readings], Book = book }, new RoadDisplay(LengthUnit.Millimetre, Mm(400)))
            .Results;

    private static WheelResult Wheel(IReadOnlyList<WheelResult> results, FigureKind kind, WheelPlace wheel) =>
        results.Single(r => r.Kind == kind && r.Wheel == wheel);

    private static WheelResult Pair(IReadOnlyList<WheelResult> results, FigureKind kind) =>
        results.Single(r => r.Kind == kind && r.Wheel is null);

    private static AskedFigure Track(double millimetres) =>
        new(FigureKind.FrontTrack, new FigureAmount.OfLength(Mm(millimetres)), null, null, null, LimitSource.Factory, null);

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)Math.Round(millimetres, 6));

    // Measures an exactly known car: wheelbase 2200, tracks 1280 and 1220, rims 380. The bisector of the strings is the x axis; the car leans to it by `lean`.
    private static List<WheelReading> StringsRoundACar(
        double lean,
        double converge,
        (double L, double R) frontToe,
        (double L, double R) rearToe
    )
    {
        const double Base = 2200,
            Rim = 380,
            Apart = 1700,
            Length = 3000;
        List<WheelReading> readings =
        [
            new WheelReading.Strings("box", Mm(Apart - (converge * Length / 2)), Mm(Apart + (converge * Length / 2)), Mm(Length)),
        ];
        double StringAt(double x, int sign) => sign * ((Apart / 2) - (converge * (x - (Base / 2)) / 2));
        void Add(WheelPlace wheel, double x, double half, int sign, double toe)
        {
            // The car's own axes turned left by `lean` about the rear middle, which stands 6 mm left of the bisector.
            var (hx, hy) = (
                (x * Math.Cos(lean)) - (sign * half * Math.Sin(lean)),
                6 + (x * Math.Sin(lean)) + (sign * half * Math.Cos(lean))
            );
            var heading = lean - (sign * toe);
            double Gap(double along)
            {
                var (px, py) = (hx + (along * Math.Cos(heading)), hy + (along * Math.Sin(heading)));
                return sign * (StringAt(px, sign) - py);
            }

            readings.Add(new WheelReading.StringGaps($"{wheel}", wheel, Mm(Gap(Rim / 2)), Mm(Gap(-Rim / 2)), Mm(Rim), Mm(Gap(0))));
        }

        Add(WheelPlace.FrontLeft, Base, 640, 1, frontToe.L);
        Add(WheelPlace.FrontRight, Base, 640, -1, frontToe.R);
        Add(WheelPlace.RearLeft, 0, 610, 1, rearToe.L);
        Add(WheelPlace.RearRight, 0, 610, -1, rearToe.R);
        readings.Add(new WheelReading.Wheelbase("wl", Side.Left, Mm(Base)));
        readings.Add(new WheelReading.Wheelbase("wr", Side.Right, Mm(Base)));
        return readings;
    }
}
