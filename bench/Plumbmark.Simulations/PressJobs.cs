using Plumbmark.Engine.Bending;

namespace Plumbmark.Simulations;

/// <summary>One simulated job: the bent part, how it is read, and what the person was told about it.</summary>
internal sealed record PressJobSetUp(
    string Shape,
    PressBar Bar,
    ThreePointBend Handbook,
    BiteModel Model,
    double Bend,
    double Friction,
    double BlockGive,
    double SeatLoss
);

/// <summary>Makes random jobs; every range is written out here.</summary>
internal static class PressJobs
{
    public const double ReadingError = 0.1e-3; // standard deviation of a travel and of a straightness reading

    public static PressJobSetUp Next(Random random, bool readAtPart)
    {
        while (true)
        {
            var (shape, real, told) = Section(random);
            var nominal = Pick(random, [215e6, 235e6, 275e6, 355e6, 300e6]);
            var yield = nominal * Between(random, 0.8, 1.2);
            var modulus = Between(random, 200e9, 210e9);
            var back = yield * Between(random, 0.05, 0.35);
            var metal = new PressMetal(
                modulus,
                yield - (0.5 * back), // the back stress adds the rest as the strain grows, so that the bar as a whole yields about where it should
                back,
                Between(random, 150, 900),
                yield * Between(random, -0.05, 0.12),
                Between(random, 10, 60),
                modulus * Between(random, 0.003, 0.015)
            );
            var (left, right) = (Between(random, 0.1, 0.28), Between(random, 0.1, 0.28));
            var handbook = new ThreePointBend(new MomentCurvature(told, new Steel(205e9, nominal)), left, right);
            var bend = Between(random, 2.5e-3, 12e-3);
            if (handbook.YieldTravelMetres is < 0.8e-3 or > 12e-3 || bend > 4 * handbook.YieldTravelMetres)
            {
                continue; // too stiff for a home press to show, or bent beyond what anybody should straighten
            }

            var bar = new PressBar(real, metal, left, right);
            bar.Accident(bend, Between(random, 1, 1.8), Between(random, -0.01, 0.01));
            var range = new YieldRange(0.8 * nominal, 1.2 * nominal);
            var model = new BiteModel(
                told,
                handbook.Curve.Steel.YieldStrain,
                BitePrior.From(handbook, range, 0.1, readAtPart),
                new BiteNoise(ReadingError, ReadingError)
            );
            return new(
                shape,
                bar,
                handbook,
                model,
                -bar.Deflection,
                Between(random, 0.05, 0.3),
                readAtPart ? Between(random, 0, 0.12) / handbook.StiffnessNewtonsPerMetre : 1e-8 * Math.Pow(60, random.NextDouble()),
                Between(random, 0, 0.15e-3)
            );
        }
    }

    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    // The real part differs from what the caliper says by up to 2 % in every size.
    private static (string Shape, CrossSection Real, CrossSection Told) Section(Random random)
    {
        var kind = random.Next(8);
        var (w, d, t) = (Between(random, 0.02, 0.05), Between(random, 0.012, 0.045), Between(random, 0.002, 0.004));
        double[] error = [.. Enumerable.Range(0, 3).Select(_ => Between(random, 0.98, 1.02))];
        CrossSection Make(double a, double b, double c) =>
            kind switch
            {
                0 => CrossSection.Rectangle(a, b / 2),
                1 => CrossSection.Round(b / 1.5),
                2 => CrossSection.Tube(b, c),
                3 => CrossSection.Box(a, b, c),
                4 => CrossSection.Channel(a, b + 0.01, c, c),
                5 => CrossSection.I(a, b + 0.01, c, c),
                6 => CrossSection.LyingChannel(a, b, c, c, legsAtRam: false),
                _ => CrossSection.Hat(a, b, 0.012, c),
            };
        var told = Make(w, d, t);
        return (told.Shape, Make(w * error[0], d * error[1], t * error[2]), told);
    }

    private static double Between(Random random, double low, double high) => low + ((high - low) * random.NextDouble());

    private static double Pick(Random random, double[] values) => values[random.Next(values.Length)];
}
