namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Every way in which one reading by itself may be wrong, for all readings at once, from one fit.</summary>
/// <remarks>
/// <para>No network is solved again: that the reading is left out follows in closed form. With the weighted misclosure m, the redundancy number r and the weighted row a:
/// rest = vPv − m²/r, places without the reading x + Q aᵀ m/r, its prediction's variance σ²/r (Belsley, Kuh and Welsch, Regression Diagnostics, 1980, from memory).</para>
/// <para>Exact for a small error; where centimetres are wrong the places move and <see cref="BlunderSearch"/> solves the network afresh for what stands out here.</para>
/// </remarks>
public static class SingleSlips
{
    /// <summary>A way in which a reading may be wrong.</summary>
    /// <param name="Doubted">The reading and its slip.</param>
    /// <param name="LogOdds">Natural logarithm of its odds against "nothing is wrong".</param>
    public sealed record Slip(Doubted Doubted, double LogOdds);

    /// <summary>All of them, reading by reading; readings that nothing checks have none.</summary>
    /// <param name="fit">The fit of all readings.</param>
    /// <param name="hints">What is known beyond the numbers.</param>
    public static IReadOnlyList<Slip> Of(NetworkFit fit, BlunderHints? hints = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        hints ??= BlunderHints.None;
        var state = fit.State;
        var source = state.Network.Source;
        var meanings = hints.Meanings.ToLookup(m => m.Believed.Id, StringComparer.Ordinal);
        var (evidence, prediction) = (new Evidence(fit.WeightedSquares, fit.Redundancy), new Prediction(fit));
        var partners = NumericSlips.Partners(source);
        var slips = new List<Slip>(16 * source.Observations.Count);
        for (var row = 0; row < state.Network.RowCount; row++)
        {
            if (state.Network.Rows[row].Observation is >= 0 and var index && fit.Readings[index].Standardised is not null)
            {
                var reading = source.Observations[index];
                var alternatives = NumericSlips.Of(reading, partners, hints);
                alternatives.AddRange(meanings[reading.Id]);
                new OfOne(state, row, reading, fit.Readings[index].RedundancyNumber, evidence, prediction).AddTo(slips, alternatives);
            }
        }

        return slips;
    }

    private sealed class OfOne(
        NetworkState state,
        int row,
        Observation reading,
        double redundancy,
        Evidence evidence,
        Prediction prediction
    )
    {
        private readonly double _misclosure = state.Rows.Misclosures[row];

        public void AddTo(List<Slip> slips, List<Alternative> all)
        {
            var sigma = reading.SigmaMetres;
            var rest = state.WeightedSquares - _misclosure * _misclosure / redundancy;
            var (d, s) = (-_misclosure * sigma / redundancy, sigma * sigma / redundancy);
            var sizes = BlunderPriors.FreeSizesMetres;
            var free = Evidence.Mean([.. sizes.Select(size => evidence.Of(rest, s, d, s, size * size))]);
            slips.Add(new(new(reading.Id, null, BlunderKind.FreeAmount, d, null), Prior(BlunderKind.FreeAmount, 1, 1) + free));
            foreach (var alternative in all)
            {
                var shared = 0;
                foreach (var other in all)
                {
                    shared += other.Kind == alternative.Kind ? 1 : 0;
                }

                if (Meant(alternative.Believed, d, s) is var (difference, variance))
                {
                    var size = reading.ValueMetres - alternative.Believed.ValueMetres;
                    slips.Add(
                        new(
                            new(reading.Id, null, alternative.Kind, size is 0 ? d - difference : size, alternative.Believed),
                            Prior(alternative.Kind, shared, alternative.Weight) + evidence.Of(rest, s, difference, variance, 0)
                        )
                    );
                }
            }
        }

        // Observed minus predicted and its variance, for the reading as it was meant.
        private (double Difference, double Variance)? Meant(Observation believed, double d, double s)
        {
            if (IsSameButForTheValue(believed))
            {
                return (d - (reading.ValueMetres - believed.ValueMetres), s);
            }

            if (prediction.Of(believed) is not { } held)
            {
                return null;
            }

            var along = prediction.Along(held, row);
            return (held.Difference - along * _misclosure / redundancy, prediction.Variance(held) + along * along / redundancy);
        }

        // Most are, and lengths are most of them: asked without a copy.
        private bool IsSameButForTheValue(Observation believed) =>
            (believed, reading) switch
            {
                (Observation.DirectDistance b, Observation.DirectDistance r) => IsSame(b, r) && b.From == r.From && b.To == r.To,
                (Observation.PlanDistance b, Observation.PlanDistance r) => IsSame(b, r) && b.From == r.From && b.To == r.To,
                _ => believed with { ValueMetres = reading.ValueMetres } == reading,
            };

        private static bool IsSame(Observation a, Observation b) => a.Id == b.Id && a.SigmaMetres == b.SigmaMetres && a.Tool == b.Tool;

        private static double Prior(BlunderKind kind, int sharedBy, double weight) =>
            Math.Log(BlunderPriors.Reading * BlunderPriors.Share(kind) * weight / sharedBy);
    }
}
