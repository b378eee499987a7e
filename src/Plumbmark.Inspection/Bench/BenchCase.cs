namespace Plumbmark.Inspection.Bench;

/// <summary>A part with what is needed to judge it: its own dimensions and type, and those of its partner.</summary>
internal sealed record BenchCase(Part Part, Reduction Reduction, VariantAnswer? Variant, BenchCase? Partner, BenchText Text)
{
    /// <summary>The variant that the book's figures are taken from: the recognised one, else the only one fitted to this car, else the likeliest.</summary>
    public PartVariant? BookVariant
    {
        get
        {
            if (Variant is null)
            {
                return null;
            }

            var fitted = Variant.Odds.Where(o => o.IsFittedToThisCar == true).ToList();
            return (Variant.Type ?? (fitted.Count == 1 ? fitted[0] : Variant.Odds[0])).Variant;
        }
    }

    /// <summary>Whether this part and its partner are known to be of different types, so that comparing them says nothing.</summary>
    public bool IsOfAnotherTypeThanPartner =>
        Variant?.Type is { } own && Partner?.Variant?.Type is { } other && own.Variant.Id != other.Variant.Id;

    /// <summary>The book has more than one type, or one that does not fit, and the measures do not say which it is, whatever a number on the part or the car's serial number make likely.</summary>
    public bool IsTypeInDoubt =>
        Variant is { Compared: > 0 } variant
        && variant.NoneOrBent < VariantAnswer.Recognised
        && (variant.Type is not { } type || OpenPairs.Any(p => p.MeasureNext is not null && Has(p, type)));

    /// <summary>The pairs of types that the measures leave open: all of them, or where a type is recognised those that it is one of.</summary>
    public IEnumerable<LookAlikes> OpenPairs =>
        Variant is not { } variant ? []
        : variant.Type is { } type ? variant.LookAlikes.Where(p => Has(p, type))
        : variant.LookAlikes;

    private static bool Has(LookAlikes pair, VariantOdds type) => pair.First.Id == type.Variant.Id || pair.Second.Id == type.Variant.Id;
}
