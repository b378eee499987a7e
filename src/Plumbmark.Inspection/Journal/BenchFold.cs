using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Journal;

/// <summary>The bench's part of the fold.</summary>
internal static class BenchFold
{
    public static IEnumerable<Act> ActsOf(PartsSection section)
    {
        foreach (var variant in section.Variants)
        {
            yield return new Act.VariantDescribed(variant);
        }

        foreach (var part in section.Items)
        {
            yield return new Act.BenchPartLaid(part with { Measures = [] });
            foreach (var measure in part.Measures)
            {
                yield return new Act.BenchMeasured(part.Id, measure);
            }
        }
    }

    public static PartsSection After(PartsSection before, Act act) =>
        act switch
        {
            Act.BenchPartLaid a => before with
            {
                Items = Fold.Put(
                    before.Items,
                    a.Part with
                    {
                        Measures = before.Part(a.Part.Id)?.Measures ?? before.PutAwayMeasures(a.Part.Id),
                    },
                    p => p.Id
                ),
                Away = [.. before.Away.Where(p => p.Id != a.Part.Id)],
            },
            Act.BenchPartPutAway a when before.Part(a.Id) is { } part => before with
            {
                Items = [.. before.Items.Where(p => p.Id != a.Id)],
                Away = [.. before.Away.Where(p => p.Id != a.Id), part],
            },
            Act.BenchMeasured a => WithMeasures(
                before,
                a.Part,
                measures => measures.Any(m => m.Id == a.Measure.Id) ? measures : [.. measures, a.Measure]
            ),
            Act.BenchMeasureWithdrawn a => WithMeasures(
                before,
                a.Part,
                measures => [.. measures.Select(m => m.Id == a.Id ? m with { Withdrawn = a.Reason } : m)]
            ),
            Act.VariantDescribed a => before with { Variants = Fold.Put(before.Variants, a.Variant, v => v.Id) },
            Act.VariantRemoved a => before with { Variants = [.. before.Variants.Where(v => v.Id != a.Id)] },
            _ => before,
        };

    private static PartsSection WithMeasures(
        PartsSection section,
        string part,
        Func<IReadOnlyList<Measure>, IReadOnlyList<Measure>> change
    ) => section with { Items = [.. section.Items.Select(p => p.Id == part ? p with { Measures = change(p.Measures) } : p)] };
}
