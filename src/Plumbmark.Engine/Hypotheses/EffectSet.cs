namespace Plumbmark.Engine.Hypotheses;

/// <summary>Effects ready for fitting against one <see cref="GaussianComparison"/>, by their numbers, alone or several together.</summary>
/// <remarks>Holds Dᵀ M D and Dᵀ M r of all of them, so that thousands of combinations cost a small solution each. An amount has its effect's own unit.</remarks>
public sealed class EffectSet
{
    // An effect known no better than to a tenth per unit (0.1 m of damage, a tenth of slope or scale) is not seen at all: what little
    // there is comes from the noise of the coordinates that its column is made of.
    internal const double LeastInformation = 100;

    private readonly double[,] _gram;
    private readonly double[] _rhs;

    internal EffectSet(double[,] gram, double[] rhs) => (_gram, _rhs) = (gram, rhs);

    /// <summary>Whether the values could show this effect at all.</summary>
    public bool IsSeen(int effect) => _gram[effect, effect] > LeastInformation;

    /// <summary>Standard uncertainty of the amount of one effect fitted alone; infinite when the values cannot show it.</summary>
    public double UncertaintyAlone(int effect) => IsSeen(effect) ? 1 / Math.Sqrt(_gram[effect, effect]) : double.PositiveInfinity;

    /// <summary>By how much the squared standardised misfit falls with the effects fitted together: a quick look before <see cref="Fit"/>; null as there.</summary>
    public double? Explained(params ReadOnlySpan<int> effects)
    {
        var solved = Solve(effects);
        return solved is var (_, rhs, amounts) ? Drop(amounts, rhs) : null;
    }

    /// <summary>The effects fitted together; null when the values do not show them or cannot tell them apart.</summary>
    public EffectFit? Fit(params ReadOnlySpan<int> effects)
    {
        var solved = Solve(effects);
        return solved is var (factor, rhs, amounts) ? new EffectFit(amounts, factor.Inverse(), Drop(amounts, rhs)) : null;
    }

    private (Cholesky Factor, double[] Rhs, double[] Amounts)? Solve(ReadOnlySpan<int> effects)
    {
        var k = effects.Length;
        var gram = new double[k, k];
        var rhs = new double[k];
        for (var i = 0; i < k; i++)
        {
            if (!IsSeen(effects[i]))
            {
                return null;
            }

            rhs[i] = _rhs[effects[i]];
            for (var j = 0; j <= i; j++)
            {
                gram[i, j] = gram[j, i] = _gram[effects[i], effects[j]];
            }
        }

        return Cholesky.Of(gram, GaussianComparison.LeastShareBesideOthers) is { } factor ? (factor, rhs, factor.Solve(rhs)) : null;
    }

    private static double Drop(double[] amounts, double[] rhs)
    {
        var drop = 0.0;
        for (var i = 0; i < amounts.Length; i++)
        {
            drop += amounts[i] * rhs[i];
        }

        return drop;
    }
}
