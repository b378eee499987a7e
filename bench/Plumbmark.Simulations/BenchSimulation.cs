using Plumbmark.Inspection.Bench;

namespace Plumbmark.Simulations;

/// <summary>How often a part's type is recognised, and how often a bent part passes for another type. Every part is invented; seeds are fixed.</summary>
/// <remarks>
/// The bends are not drawn from the model that judges them. "Hinge": a lever bent by 1 to 6 degrees about an axis square to it, at a place 40 to 120 mm from the pad, in any
/// plane: the pad moves up or down and sideways by the angle times the distance, so both dimensions move, by unlike shares. "One way": a dimension alone, or
/// both, moved by 2 to 10 mm either way, as if somebody had aimed at the other type.
/// </remarks>
internal static class BenchSimulation
{
    private const int Parts = 100_000;

    // The beliefs of VariantPriors were chosen by looking at other seeds; this one was drawn once, after they stood.
    private const int HeldOutSeed = 61_253;
    private const double Step = 5e-3;
    private const double Tolerance = 0.4e-3;

    public static void Run(TextWriter output)
    {
        output.WriteLine(
            FormattableString.Invariant(
                $"Two types of a part that differ by 5 mm in one dimension of two; {Parts:N0} parts a row, seed {HeldOutSeed}, which nothing was chosen by."
            )
        );
        output.WriteLine(
            "separated: the right type, straight or bent, named with 95 % or more. straight: named so and straight. wrong: the other named so. ahead: likelier."
        );
        output.WriteLine(
            "not mistaken: the other type is not named, neither straight nor bent. Goals: 99 % separated, 95 % not mistaken with both measured, at 0.3 mm."
        );
        output.WriteLine();
        output.WriteLine("straight parts               u mm  measured   separated %  straight %  wrong %  ahead %");
        foreach (var u in new[] { 0.1e-3, 0.3e-3, 0.5e-3, 1.0e-3 })
        {
            foreach (var both in new[] { false, true })
            {
                StraightRow(output, u, both);
            }
        }

        output.WriteLine();
        output.WriteLine(
            "bent parts of the right type u mm  measured   other, straight %   other, straight or bent %   not mistaken %   bent or none 95 %"
        );
        foreach (var u in new[] { 0.1e-3, 0.3e-3, 0.5e-3 })
        {
            foreach (var both in new[] { false, true })
            {
                BentRow(output, "hinge", u, both, Hinge);
                BentRow(output, "one way", u, both, OneWay);
            }
        }
    }

    private static void StraightRow(TextWriter output, double u, bool both)
    {
        var random = new Random(HeldOutSeed);
        var (separated, right, wrong, likelier) = (0, 0, 0, 0);
        for (var i = 0; i < Parts; i++)
        {
            var early = random.Next(2) == 0;
            var answer = Judge(Made(random, early), random, u, both);
            var (own, other) = (Odds(answer, early), Odds(answer, !early));
            separated += own.Straight + own.Bent >= VariantAnswer.Recognised ? 1 : 0;
            right += own.Straight >= VariantAnswer.Recognised ? 1 : 0;
            wrong += other.Straight + other.Bent >= VariantAnswer.Recognised ? 1 : 0;
            likelier += own.Straight + own.Bent > other.Straight + other.Bent ? 1 : 0;
        }

        output.WriteLine(
            $"{"", -28} {u * 1000:F1}   {(both ? "both" : "one "), -8}  {Share(separated), 11}  {Share(right), 10}  {Share(wrong), 7}  {Share(likelier), 7}"
        );
    }

    private static void BentRow(TextWriter output, string name, double u, bool both, Func<Random, (double Pad, double Length)> bend)
    {
        var random = new Random(HeldOutSeed);
        var (straight, mistaken, caught) = (0, 0, 0);
        for (var i = 0; i < Parts; i++)
        {
            var early = random.Next(2) == 0;
            var made = Made(random, early);
            var (pad, length) = bend(random);
            var answer = Judge((made.Pad + pad, made.Length + length), random, u, both);
            var other = Odds(answer, !early);
            straight += other.Straight >= VariantAnswer.Recognised ? 1 : 0;
            mistaken += other.Straight + other.Bent >= VariantAnswer.Recognised ? 1 : 0;
            caught += answer.NoneOrBent >= VariantAnswer.Recognised ? 1 : 0;
        }

        output.WriteLine(
            $"{name, -28} {u * 1000:F1}   {(both ? "both" : "one "), -8}  {Share(straight), 17}   {Share(mistaken), 24}   {Share(Parts - mistaken), 14}   {Share(caught), 17}"
        );
    }

    // Makers' scatter fills the tolerance evenly.
    private static (double Pad, double Length) Made(Random random, bool early) =>
        (36e-3 - (early ? 0 : Step) + Even(random, Tolerance), 140e-3 + Even(random, Tolerance));

    private static (double Pad, double Length) Hinge(Random random)
    {
        var angle = (1 + (5 * random.NextDouble())) * Math.PI / 180;
        var distance = 40e-3 + (80e-3 * random.NextDouble());
        var plane = 2 * Math.PI * random.NextDouble();
        // The part of the movement out of the lever's plane changes the pad height; the part in it, and the arc itself, change the length.
        var moved = angle * distance;
        return (moved * Math.Cos(plane), (moved * Math.Sin(plane)) - (moved * angle / 2));
    }

    private static (double Pad, double Length) OneWay(Random random)
    {
        double Moved() => (random.Next(2) == 0 ? 1 : -1) * (2e-3 + (8e-3 * random.NextDouble()));
        return random.Next(3) switch
        {
            0 => (Moved(), 0),
            1 => (0, Moved()),
            _ => (Moved(), Moved()),
        };
    }

    private static VariantAnswer Judge((double Pad, double Length) truth, Random random, double u, bool both)
    {
        List<DimensionValue> measured = [Measured("pad-height", truth.Pad, random, u)];
        if (both)
        {
            measured.Add(Measured("arm-length", truth.Length, random, u));
        }

        return VariantIdentification.Of(new Part("p", PartKind.SteeringLever), measured, s_variants, serial: null)!;
    }

    private static readonly PartVariant[] s_variants = [Type("early", 36.0m), Type("late", 31.0m)];

    private static PartVariant Type(string id, decimal padMillimetres) =>
        new(
            id,
            PartKind.SteeringLever,
            id,
            Figures: [new BookFigure("pad-height", Size(padMillimetres), Size(0.4m)), new BookFigure("arm-length", Size(140m), Size(0.4m))]
        );

    private static Amount Size(decimal millimetres) => new Amount.OfLength(Engine.Lengths.Length.FromMillimetres(millimetres));

    private static DimensionValue Measured(string dimension, double truth, Random random, double u) =>
        new(dimension, Quantity.Length, DimensionNature.Shape, truth + (u * Frame.Normal(random)), u, 0, null, []);

    private static VariantOdds Odds(VariantAnswer answer, bool early) =>
        answer.Odds.Single(o => o.Variant.Id == (early ? "early" : "late"));

    private static double Even(Random random, double half) => half * ((2 * random.NextDouble()) - 1);

    private static string Share(int count) => $"{100.0 * count / Parts:F2}";
}
