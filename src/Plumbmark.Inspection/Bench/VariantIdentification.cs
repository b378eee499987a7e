using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>Which variant a part is, by Bayes' rule over the variants of its kind, each straight or bent, and "none of these".</summary>
/// <remarks>
/// For a dimension measured as x with u, and a book figure m with tolerance t (rectangular, so t/√3): z = (x - m) / s, s² = u² + t²/3.
/// Straight: p = Π φ(z)/s. Bent: each dimension is moved by about b with probability q or left alone, and at least one is moved,
/// p = (Π ((1-q) φ(x; s²) + q φ(x; s² + b²)) - Π (1-q) φ(x; s²)) / (1 - (1-q)ᵏ). None of these: a broad bell about the middle of the book's figures.
/// Dimensions count as independent. A wrong variant looks exactly like a bent part in one dimension; only a second one tells them apart.
/// </remarks>
public static class VariantIdentification
{
    // Distance in standard uncertainties at which two types of equal odds are confused in one case of twenty: 2 Φ⁻¹(0.95).
    private const double Separable = 2 * 1.6448536269514722;
    private const double BroadLengthMetres = 25e-3;
    private const double BroadAngleRadians = 10 * Math.PI / 180;

    /// <summary>The answer; null when the book has no figure for this kind.</summary>
    /// <param name="part">The part, for its kind and its numbers.</param>
    /// <param name="dimensions">Its measured dimensions.</param>
    /// <param name="variants">Every variant the book has.</param>
    /// <param name="serial">The car's serial number; null when not known.</param>
    /// <param name="priors">What is believed beforehand.</param>
    public static VariantAnswer? Of(
        Part part,
        IReadOnlyList<DimensionValue> dimensions,
        IReadOnlyList<PartVariant> variants,
        string? serial,
        VariantPriors? priors = null
    )
    {
        var belief = priors ?? VariantPriors.Default;
        // A type of which the book has no figure at all cannot be told from anything.
        PartVariant[] kind = [.. variants.Where(v => v.Kind == part.Kind && v.Figures.Count > 0)];
        if (kind.Length == 0)
        {
            return null;
        }

        // Only what every variant has a figure for can be compared fairly between them.
        DimensionValue[] compared = [.. dimensions.Where(d => kind.All(v => v.Figure(d.Dimension)?.Nominal.Quantity == d.Quantity))];
        var number = SerialNumber.Read(serial);
        var weights = kind.Select(v => Weight(v, part, number, belief)).ToArray();
        var sum = weights.Sum();
        var straight = new double[kind.Length];
        var bent = new double[kind.Length];
        for (var i = 0; i < kind.Length; i++)
        {
            var prior = (1 - belief.NoneOfThese) * weights[i] / sum;
            straight[i] = Math.Log(prior * (1 - belief.Bent)) + Straight(kind[i], compared, belief);
            bent[i] = Math.Log(prior * belief.Bent) + Bent(kind[i], compared, belief);
        }

        var none = Math.Log(belief.NoneOfThese) + NoneOfThese(kind, compared);
        var total = LogSum([.. straight, .. bent, none]);
        VariantOdds[] odds =
        [
            .. kind.Select((v, i) => new VariantOdds(v, Math.Exp(straight[i] - total), Math.Exp(bent[i] - total), v.IsFittedTo(number)))
                .OrderByDescending(o => o.Straight)
                .ThenByDescending(o => o.Bent),
        ];
        return new VariantAnswer(
            odds,
            Math.Exp(LogSum([.. bent, none]) - total),
            DecidedBy(odds, compared, belief),
            [.. LookAlikePairs(kind, compared, belief)],
            compared.Length
        );
    }

    private static double Weight(PartVariant variant, Part part, SerialNumber? serial, VariantPriors belief)
    {
        var fitted = variant.IsFittedTo(serial) == true ? belief.SerialWeight : 1;
        var numbers = variant.Numbers.Select(PartsSection.Bare).ToHashSet(StringComparer.Ordinal);
        var found = part.Card.Numbers.Any(n => numbers.Contains(PartsSection.Bare(n.Text)));
        return fitted * (found ? belief.NumberWeight : 1);
    }

    private static double Spread(PartVariant variant, DimensionValue d, VariantPriors belief)
    {
        var untold = d.Quantity switch
        {
            Quantity.Length => belief.UntoldToleranceMetres,
            Quantity.Angle => belief.UntoldToleranceRadians,
            // A spring's rate: one part in twenty either way, as springs are sold (common practice).
            _ => 0.05 * variant.Figure(d.Dimension)!.Nominal.Si,
        };
        var tolerance = variant.Figure(d.Dimension)!.Tolerance?.Si ?? untold;
        return Math.Sqrt((d.U * d.U) + (tolerance * tolerance / 3));
    }

    private static double Straight(PartVariant variant, DimensionValue[] compared, VariantPriors belief) =>
        compared.Sum(d => LogNormal(d.Si - variant.Figure(d.Dimension)!.Nominal.Si, Spread(variant, d, belief)));

    private static double Bent(PartVariant variant, DimensionValue[] compared, VariantPriors belief)
    {
        if (compared.Length == 0)
        {
            return 0;
        }

        double any = 0,
            unmoved = 0;
        foreach (var d in compared)
        {
            var off = d.Si - variant.Figure(d.Dimension)!.Nominal.Si;
            var spread = Spread(variant, d, belief);
            var bend = d.Quantity switch
            {
                Quantity.Length => belief.BendMetres,
                Quantity.Angle => belief.BendRadians,
                _ => 0.2 * variant.Figure(d.Dimension)!.Nominal.Si,
            };
            var still = Math.Log(1 - belief.Moved) + LogNormal(off, spread);
            var moved = Math.Log(belief.Moved) + LogNormal(off, Math.Sqrt((spread * spread) + (bend * bend)));
            any += LogSum([still, moved]);
            unmoved += still;
        }

        // At least one moved: take away the case of none, and share its probability among the rest.
        var none = Math.Pow(1 - belief.Moved, compared.Length);
        var left = 1 - Math.Exp(unmoved - any);
        return left <= 0 ? double.NegativeInfinity : any + Math.Log(left) - Math.Log(1 - none);
    }

    private static double NoneOfThese(PartVariant[] kind, DimensionValue[] compared) =>
        compared.Sum(d =>
        {
            var middle = kind.Average(v => v.Figure(d.Dimension)!.Nominal.Si);
            var broad = d.Quantity switch
            {
                Quantity.Length => BroadLengthMetres,
                Quantity.Angle => BroadAngleRadians,
                _ => 0.5 * middle,
            };
            var across = kind.Max(v => Math.Abs(v.Figure(d.Dimension)!.Nominal.Si - middle));
            return LogNormal(d.Si - middle, broad + across);
        });

    private static string? DecidedBy(VariantOdds[] odds, DimensionValue[] compared, VariantPriors belief)
    {
        if (odds.Length < 2 || compared.Length == 0)
        {
            return null;
        }

        double For(DimensionValue d) => Straight(odds[0].Variant, [d], belief) - Straight(odds[1].Variant, [d], belief);
        var best = compared.MaxBy(For)!;
        // Odds of 3 to 1 are hardly worth naming (Kass and Raftery, J. Am. Stat. Assoc. 90 (1995) 773).
        return For(best) > Math.Log(3) ? best.Dimension : null;
    }

    private static IEnumerable<LookAlikes> LookAlikePairs(PartVariant[] kind, DimensionValue[] compared, VariantPriors belief)
    {
        for (var i = 0; i < kind.Length; i++)
        {
            for (var j = i + 1; j < kind.Length; j++)
            {
                var (a, b) = (kind[i], kind[j]);
                var squares = compared.Sum(d => Squared(a, b, d, belief));
                if (Math.Sqrt(squares) < Separable)
                {
                    yield return LookAlike(a, b, squares, compared, belief);
                }
            }
        }
    }

    private static LookAlikes LookAlike(PartVariant a, PartVariant b, double squares, DimensionValue[] compared, VariantPriors belief)
    {
        // What any other dimension of the book would add if it were measured as well as an ordinary caliper or protractor can.
        var others =
            from figure in a.Figures
            where b.Figure(figure.Dimension)?.Nominal.Quantity == figure.Nominal.Quantity
            let trial = new DimensionValue(figure.Dimension, figure.Nominal.Quantity, DimensionNature.Shape, 0, UsualU(figure), 0, null, [])
            let before = compared.Where(d => d.Dimension == figure.Dimension).Sum(d => Squared(a, b, d, belief))
            let after = squares - before + Math.Max(before, Squared(a, b, trial, belief))
            orderby after descending
            select (
                figure.Dimension,
                After: Math.Sqrt(after),
                Difference: Math.Abs(figure.Nominal.Si - b.Figure(figure.Dimension)!.Nominal.Si)
            );
        var best = others.FirstOrDefault();
        var separates = best.After >= Separable;
        return new LookAlikes(
            a,
            b,
            Math.Sqrt(squares),
            separates ? best.Dimension : null,
            separates ? best.Difference : null,
            separates
                ? Texts.Say("bench.variant-identification.and-cannot-be-told-apart", a.Name, b.Name, DimensionWords.Name(best.Dimension))
                : Texts.Say("bench.variant-identification.and-cannot-be-told-apart-by-any-dimension-in", a.Name, b.Name)
        );
    }

    private static double UsualU(BookFigure figure) =>
        figure.Nominal.Quantity switch
        {
            Quantity.Length => MeasuringDoubt.Untold.ReadingMetres,
            Quantity.Angle => 0.15 * Math.PI / 180,
            _ => 0.02 * figure.Nominal.Si,
        };

    private static double Squared(PartVariant a, PartVariant b, DimensionValue d, VariantPriors belief)
    {
        var difference = a.Figure(d.Dimension)!.Nominal.Si - b.Figure(d.Dimension)!.Nominal.Si;
        var (s, t) = (Spread(a, d, belief), Spread(b, d, belief));
        return difference * difference / (((s * s) + (t * t)) / 2);
    }

    private static double LogNormal(double x, double s) => (-x * x / (2 * s * s)) - Math.Log(s * Math.Sqrt(2 * Math.PI));

    private static double LogSum(ReadOnlySpan<double> logs)
    {
        var largest = double.NegativeInfinity;
        foreach (var l in logs)
        {
            largest = Math.Max(largest, l);
        }

        if (double.IsNegativeInfinity(largest))
        {
            return largest;
        }

        var sum = 0.0;
        foreach (var l in logs)
        {
            sum += Math.Exp(l - largest);
        }

        return largest + Math.Log(sum);
    }
}
