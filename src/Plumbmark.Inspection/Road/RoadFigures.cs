using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>Makes the figures of a model: value, uncertainty, verdict and what contributes.</summary>
internal static class RoadFigures
{
    // Below a thousandth of a degree or of a millimetre a contribution is nobody's business.
    private const double LeastAngle = 1e-3 * Math.PI / 180;
    private const double LeastLength = 1e-6;
    private const double LeastSlope = 1e-6;

    // Limits end at what is drawn as often as not: three seconds of arc or a hundredth of a millimetre beyond is rounding.
    private const double LeastDrawn = 1.5e-5;

    /// <summary>The figures that the model can give.</summary>
    public static IReadOnlyList<RoadFigure> Of(RoadModel model)
    {
        var amounts = model.Deviations.Amounts;
        var drawn = model.Kinematics.Basics(new double[RoadParameters.Count]);
        var found = model.Kinematics.Basics(amounts);
        var slopes = model.Kinematics.Slopes(amounts);

        // Shares of a difference are taken with the slopes half way, which leaves only third-order remainders.
        double[] half = [.. amounts.Select(a => 0.5 * a)];
        var (basicsHalf, slopesHalf) = (model.Kinematics.Basics(half), model.Kinematics.Slopes(half));
        var bows = FigureBow.Of(model, FigureFormula.All, DeviationSpread.Of(model.Deviations));
        var figures = new List<RoadFigure>();
        foreach (var (formula, bow) in FigureFormula.All.Zip(bows))
        {
            var value = formula.Of(found);
            if (double.IsFinite(value) && (IsMoved(formula, found, slopes) || BookFor(formula, model.Section.Book) is not null))
            {
                var slope = formula.Slope(found, slopes);
                var unmeasured = model.Deviations.AllowedVariance(slope);
                var u = Math.Sqrt(model.Deviations.FoundVariance(slope) + unmeasured);
                var book = BookFor(formula, model.Section.Book);
                var isBeyond = IsBeyond(book, formula.Of(drawn));
                var within = isBeyond ? null : Within(book, value + bow, u);
                figures.Add(
                    new(
                        formula.Kind,
                        formula.Side,
                        formula.Of(drawn),
                        value,
                        u,
                        Math.Sqrt(unmeasured),
                        book,
                        within,
                        within is { } p ? VerdictOf(p) : null,
                        Contributions(formula, formula.Slope(basicsHalf, slopesHalf), model.Deviations)
                    )
                    {
                        Bow = bow,
                        IsDrawingBeyondBook = isBeyond,
                    }
                );
            }
        }

        return figures;
    }

    private static bool IsBeyond(AskedFigure? book, double drawn) =>
        drawn < book?.LeastSi - LeastDrawn || drawn > book?.MostSi + LeastDrawn;

    // A live axle's own camber and track, say, depend on nothing that is measured: they are as drawn, and not worth a line.
    private static bool IsMoved(FigureFormula formula, double[] basics, double[][] slopes) =>
        formula.Slope(basics, slopes).Any(s => Math.Abs(s) > LeastSlope);

    /// <summary>The book's figure for a formula. Toe is always set last, with the track rods, and judged at the wheels: frame and parts are not asked for it.</summary>
    public static AskedFigure? BookFor(FigureFormula formula, IEnumerable<AskedFigure> book) =>
        formula.Kind == FigureKind.ToeIn ? null : book.FirstOrDefault(b => b.Kind == formula.Kind);

    /// <summary>Probability of being within what is asked; null without limits.</summary>
    public static double? Within(AskedFigure? book, double value, double u) => Within(book?.LeastSi, book?.MostSi, value, u);

    /// <summary>Probability of being within two limits, of which either may be missing; null without any.</summary>
    public static double? Within(double? least, double? most, double value, double u) =>
        (least, most) switch
        {
            ({ } l, { } m) => ConformityProbability.Between(value, u, l, m),
            ({ } l, null) => ConformityProbability.AtLeast(value, u, l),
            (null, { } m) => ConformityProbability.AtMost(value, u, m),
            _ => null,
        };

    /// <summary>
    /// Probability of not being beyond the limit on the side where the value reads; null without any. Where u is small beside the limits this is the probability of being within; where it is large, that one is
    /// small for want of knowledge alone, and that must call nothing out.
    /// </summary>
    public static double? NotBeyond(double? least, double? most, double value, double u) =>
        (least, most) switch
        {
            ({ } l, { } m) => value > 0.5 * (l + m)
                ? ConformityProbability.AtMost(value, u, m)
                : ConformityProbability.AtLeast(value, u, l),
            _ => Within(least, most, value, u),
        };

    /// <summary>The verdict on one value by itself.</summary>
    public static Verdict VerdictOf(double within, double notBeyond) =>
        VerdictOf(within) == Verdict.True ? Verdict.True
        : VerdictOf(notBeyond) == Verdict.Out ? Verdict.Out
        : Verdict.CannotTellYet;

    /// <summary>The verdict on a probability of being within.</summary>
    public static Verdict VerdictOf(double probabilityWithin) =>
        DecisionRule.Default.Decide(probabilityWithin) switch
        {
            Conformity.Conforms => Verdict.True,
            Conformity.DoesNotConform => Verdict.Out,
            _ => Verdict.CannotTellYet,
        };

    private static List<Contribution> Contributions(FigureFormula formula, double[] slope, RoadDeviations deviations)
    {
        var least = UnitOf(formula.Kind) == FigureUnit.Angle ? LeastAngle : LeastLength;
        return
        [
            .. RoadGroup
                .All.Select(g => ContributionOf(g, slope, deviations))
                .Where(c => Math.Abs(c.Amount) >= least)
                .OrderByDescending(c => Math.Abs(c.Amount)),
        ];
    }

    /// <summary>Whether a figure is an angle or a length.</summary>
    public static FigureUnit UnitOf(FigureKind kind) =>
        kind
            is FigureKind.Wheelbase
                or FigureKind.WheelbaseSplit
                or FigureKind.FrontTrack
                or FigureKind.RearTrack
                or FigureKind.RearOffset
                or FigureKind.DogTrack
                or FigureKind.RideHeightSplit
            ? FigureUnit.Length
            : FigureUnit.Angle;

    private static Contribution ContributionOf(RoadGroup group, double[] slope, RoadDeviations deviations)
    {
        var own = new double[slope.Length];
        var amount = 0.0;
        foreach (var i in group.Parameters)
        {
            own[i] = slope[i];
            amount += slope[i] * deviations.Amounts[i];
        }

        return new(group.What, group.Side, amount, Math.Sqrt(deviations.FoundVariance(own)));
    }
}
