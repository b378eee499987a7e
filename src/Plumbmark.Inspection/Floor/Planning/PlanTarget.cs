using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Something that readings should settle: a check, or a form of damage that should not be able to hide.</summary>
/// <param name="Id">The check's name, or the form's.</param>
/// <param name="Gradient">What it is made of, in the design's coordinates.</param>
/// <param name="LimitMetres">The limit it is held against.</param>
/// <param name="ValueMetres">What the readings so far say; zero when nothing is measured yet, because most of a frame is sound.</param>
/// <param name="UMetres">Standard uncertainty now.</param>
internal sealed record PlanTarget(string Id, double[] Gradient, double LimitMetres, double ValueMetres, double UMetres)
{
    // Far from settled every reading is worth little by the chances below; this share for each e-fold keeps the order right.
    private const double WorthOfFold = 0.2;

    // Between chance and certainty: with u below a limit over 3.29 a sound value is found true nine times in ten.
    private const double SettledShare = 2 * 1.6449;

    private static readonly double s_guard = -Normal.Quantile(1 - CheckRule.Asked); // 1.645 of ISO 14253-1

    /// <summary>Whether the value is measured and has a verdict to wait for; a form of damage and an unmeasured check have none.</summary>
    public bool IsMeasured { get; init; }

    /// <summary>Whether it is a form of damage: it only must not be able to hide.</summary>
    public bool IsForm { get; init; }

    /// <summary>Whether nothing more is needed: it has a verdict and nothing can hide, or a sound frame would get one.</summary>
    public bool IsSettled => IsSettledBy(UMetres);

    /// <summary>Whether nothing more would be needed with that uncertainty.</summary>
    /// <param name="uMetres">Standard uncertainty then.</param>
    public bool IsSettledBy(double uMetres)
    {
        var canHide = FrameBlindSpots.Noticed * uMetres > LimitMetres;
        return IsForm ? !canHide
            : !IsMeasured ? uMetres * SettledShare <= LimitMetres
            : CheckRule.VerdictOf(ValueMetres, uMetres, LimitMetres) switch
            {
                Verdict.Out => true,
                Verdict.True => !canHide,
                _ => false,
            };
    }

    /// <summary>How unsettled it would be with a smaller uncertainty: the chance of no verdict, plus one while damage of the limit's size could hide.</summary>
    /// <param name="uMetres">Standard uncertainty after the reading.</param>
    public double Unsettled(double uMetres) =>
        1
        - ChanceOfVerdict(uMetres)
        + (FrameBlindSpots.Noticed * uMetres > LimitMetres ? 1 : 0)
        + (WorthOfFold * Math.Log(1 + (uMetres / LimitMetres)));

    /// <summary>The chance that the value to come will be found true or out.</summary>
    public double ChanceOfVerdict(double uMetres)
    {
        var guard = s_guard * uMetres;
        var accept = LimitMetres - guard;
        if (!IsMeasured)
        {
            // A sound frame: the value to come is only what the measuring makes of zero.
            return accept > 0 ? ChanceWithin(accept, uMetres) : 0;
        }

        // The value to come is spread about the present one by what the reading will take away from its variance.
        var spread = Math.Sqrt(Math.Max(0, (UMetres * UMetres) - (uMetres * uMetres)));
        return (accept > 0 ? ChanceWithin(accept, spread) : 0) + 1 - ChanceWithin(LimitMetres + guard, spread);
    }

    private double ChanceWithin(double border, double spread) =>
        spread <= 0
            ? (Math.Abs(ValueMetres) <= border ? 1 : 0)
            : Normal.Cumulative((border - ValueMetres) / spread) - Normal.Cumulative((-border - ValueMetres) / spread);
}
