namespace Plumbmark.Inspection.Bench;

/// <summary>Which variant a part is. The probabilities of all variants, straight, and of "none of these, or bent" add up to one.</summary>
/// <param name="Odds">Every variant of the kind, the likeliest first.</param>
/// <param name="NoneOrBent">Probability that it is none of these, or one of them bent.</param>
/// <param name="DecidedBy">The dimension that spoke most for the likeliest against the next; null when nothing decided.</param>
/// <param name="LookAlikes">Pairs that the measures so far cannot separate.</param>
/// <param name="Compared">How many measured dimensions the book has figures for.</param>
public sealed record VariantAnswer(
    IReadOnlyList<VariantOdds> Odds,
    double NoneOrBent,
    string? DecidedBy,
    IReadOnlyList<LookAlikes> LookAlikes,
    int Compared
)
{
    /// <summary>From this probability on a variant counts as recognised.</summary>
    public const double Recognised = 0.95;

    /// <summary>The variant that the part is, straight; null when none reaches <see cref="Recognised"/>.</summary>
    public VariantOdds? Straight => Odds.FirstOrDefault(o => o.Straight >= Recognised);

    /// <summary>The variant that the part is, straight or bent; null when none reaches <see cref="Recognised"/>.</summary>
    public VariantOdds? Type => Odds.FirstOrDefault(o => o.Straight + o.Bent >= Recognised);
}
