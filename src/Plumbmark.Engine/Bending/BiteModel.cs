namespace Plumbmark.Engine.Bending;

/// <summary>The spring-back of one set-up before its first bite; its <see cref="Start"/> learns from each bite after that.</summary>
/// <remarks>
/// <para>All bites go the same way with the same blocks, so travel and set are tied by one curve: a bite that ends with a total set S has a spring-back
/// e(S) = (1 + g)·d·φ_h(S/d)·(1 − b·exp(−S/(l·d))). Here d is the travel at first yield, φ the theory of <see cref="SpringBackTable"/> with hardening
/// ratio h, b the early yield of a part that was bent the other way before (Bauschinger), which fades over l travels at first yield, and g what saddles,
/// blocks and the frame of the press give for each unit that the part itself gives.</para>
/// <para>The five unknowns are kept as weights on a grid and multiplied by the likelihood of each bite (Bayes' rule; the grid is own computation).
/// A bite without set still speaks: whatever says that it should have set loses weight.</para>
/// </remarks>
public sealed class BiteModel
{
    private const int YieldSteps = 100;
    private const double YieldReach = 3.2; // standard deviations of the prior on either side

    // Priors: own choice, wide enough for mild and medium-carbon steel; the simulated jobs of bench/results/press.txt test them with another physics.
    private static readonly (double Ratio, double Weight)[] s_hardening = [(0, 0.35), (0.006, 0.4), (0.025, 0.25)];
    private static readonly (double Share, double Weight)[] s_early = [(0, 0.2), (0.15, 0.26), (0.3, 0.26), (0.45, 0.18), (0.6, 0.1)];
    private static readonly double[] s_fade = [0.15, 0.7];

    /// <summary>A model of one set-up.</summary>
    /// <param name="section">The section in the press.</param>
    /// <param name="yieldStrain">Strain at first yield in the middle of the range.</param>
    /// <param name="prior">What is believed about the travel at first yield and about what gives besides the part.</param>
    /// <param name="noise">How well it is read.</param>
    public BiteModel(CrossSection section, double yieldStrain, BitePrior prior, BiteNoise noise)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(noise);
        var table = new SpringBackTable(section, yieldStrain, [.. s_hardening.Select(h => h.Ratio)]);
        Start = new BiteBelief(table, noise, [.. Grid(prior)], setSoFarMetres: 0);
    }

    /// <summary>What is believed before the first bite.</summary>
    public BiteBelief Start { get; }

    private static IEnumerable<SpringBackCurve> Grid(BitePrior prior)
    {
        foreach (var (give, giveWeight) in prior.Gives)
        {
            for (var i = 0; i <= YieldSteps; i++)
            {
                var z = YieldReach * ((2.0 * i / YieldSteps) - 1);
                var yieldTravel = prior.YieldTravelMetres * Math.Exp(prior.LogSpread * z);
                foreach (var (hardening, early, fade, weight) in Shapes())
                {
                    yield return new(yieldTravel, give, hardening, early, fade, Math.Log(giveWeight * weight) - (z * z / 2));
                }
            }
        }
    }

    private static IEnumerable<(int Hardening, double Early, double Fade, double Weight)> Shapes()
    {
        for (var h = 0; h < s_hardening.Length; h++)
        {
            foreach (var (share, weight) in s_early)
            {
                // Without early yield there is nothing to fade.
                var fades = share > 0 ? s_fade : s_fade[..1];
                foreach (var fade in fades)
                {
                    yield return (h, share, fade, s_hardening[h].Weight * weight / fades.Length);
                }
            }
        }
    }
}
