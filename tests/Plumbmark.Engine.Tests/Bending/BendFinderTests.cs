using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>Where is it bent? On made-up parts whose bend is known.</summary>
public class BendFinderTests
{
    private const double U = 0.05e-3;

    [Fact]
    public void ACleanKink_IsPlacedAndMeasured()
    {
        var kink = Kink(Readings(centre: 0.13, angle: 0.03, length: 0, noise: 0, seed: 1));
        Assert.Equal(0.13, kink.Bend.CentreMetres, 1e-3);
        Assert.Equal(0.03, kink.Bend.AngleRadians, 3e-4);
        Assert.InRange(kink.Misfit, 0, 0.5);
        Assert.True(kink.Odds > 1);
    }

    [Fact]
    public void ASweep_IsToldFromAKink()
    {
        var sweep = Assert.IsType<BendFinding.Sweep>(BendFinder.Find(Readings(0.15, 0.03, 0.18, noise: 0, seed: 2)));
        Assert.Equal(0.15, sweep.Bend.CentreMetres, 3e-3);
        Assert.Equal(0.18, sweep.Bend.LengthMetres, 0.01);
        Assert.Equal(0.03, sweep.Bend.AngleRadians, 1e-3);
        Assert.True(sweep.Odds > 100);
    }

    [Fact]
    public void AStraightPart_IsCalledStraight_WithWhatWouldNotShow()
    {
        var straight = Assert.IsType<BendFinding.Straight>(BendFinder.Find(Readings(0.15, 0, 0, noise: U, seed: 3)));
        Assert.InRange(straight.SmallestAngleRadians, 1e-4, 3e-3);
    }

    [Fact]
    public void FourStations_AreTooFew()
    {
        var few = Assert.IsType<BendFinding.TooFew>(BendFinder.Find([.. Readings(0.15, 0.03, 0, 0, 4).Take(4)]));
        Assert.Equal((4, 5), (few.Readings, few.Needed));
    }

    /// <summary>200 noisy kinks: the true place and angle lie within two standard uncertainties in about 95 of 100.</summary>
    [Fact]
    public void StatedUncertainty_CoversTheTruth()
    {
        var (placed, turned) = (0, 0);
        const int Parts = 200;
        for (var seed = 0; seed < Parts; seed++)
        {
            var centre = 0.08 + (0.14 * seed / Parts);
            // Noise may make a kink look like a short sweep; place and angle must hold all the same.
            var bend = BendFinder.Find(Readings(centre, 0.02, 0, U, seed + 100)).Match(_ => null!, _ => null!, k => k.Bend, s => s.Bend);
            placed += Math.Abs(bend.CentreMetres - centre) <= 2 * bend.CentreUncertaintyMetres ? 1 : 0;
            turned += Math.Abs(bend.AngleRadians - 0.02) <= 2 * bend.AngleUncertaintyRadians ? 1 : 0;
        }

        // Binomial(200, 0.95) stays above 178 in 999 of 1,000.
        Assert.InRange(placed, 178, Parts);
        Assert.InRange(turned, 178, Parts);
    }

    [Fact]
    public void TiltAndOffset_DoNotMatter()
    {
        var plain = Kink(Readings(0.13, 0.03, 0, U, 7)).Bend;
        var tilted = Kink([
            .. Readings(0.13, 0.03, 0, U, 7).Select(r => r with { HeightMetres = r.HeightMetres + 0.004 + (0.02 * r.StationMetres) }),
        ]).Bend;
        Assert.Equal(plain.CentreMetres, tilted.CentreMetres, 1e-7);
        Assert.Equal(plain.AngleRadians, tilted.AngleRadians, 1e-9);
    }

    [Fact]
    public void HeightOverChord_IsTheCrownOfTheTriangle()
    {
        var kink = new Bend(0.1, 0, 0.03, 0, 0, 0);
        Assert.Equal(0.03 * 0.1 * 0.2 / 0.3, kink.HeightOverChord(0.1, 0, 0.3), 1e-12);
        Assert.Equal(0, kink.HeightOverChord(0.3, 0, 0.3), 1e-12);
        var arc = new Bend(0.15, 0, 0.03, 0, 0.3, 0);
        Assert.Equal(0.03 * 0.3 / 8, arc.HeightOverChord(0.15, 0, 0.3), 1e-12); // sagitta c·θ/8 of a shallow arc
    }

    [Fact]
    public void Twist_IsFoundBetweenTwoStations()
    {
        TwistReading[] readings = [new(0, 0.010, 0.010, 0.05, U), new(0.3, 0.0112, 0.0100, 0.05, U)];
        var twist = Twist.From(readings);
        Assert.Equal(0.024, twist!.AngleRadians, 1e-9);
        Assert.True(twist.IsSeen);
        Assert.False(Twist.From([readings[0], readings[1] with { LeftMetres = 0.01005 }])!.IsSeen);
        Assert.Null(Twist.From([readings[0]]));
    }

    private static BendFinding.Kink Kink(IReadOnlyList<ProfileReading> readings) =>
        Assert.IsType<BendFinding.Kink>(BendFinder.Find(readings));

    private static List<ProfileReading> Readings(double centre, double angle, double length, double noise, int seed)
    {
        var random = new Random(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return
        [
            .. Enumerable
                .Range(0, 13)
                .Select(i => i * 0.025)
                .Select(x => new ProfileReading(x, (-angle * Bend.UnitShape(x - centre, length)) + (noise * Normal()), U)),
        ];
    }
}
