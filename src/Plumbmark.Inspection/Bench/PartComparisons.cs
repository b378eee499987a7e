namespace Plumbmark.Inspection.Bench;

/// <summary>Holds every dimension of a part against the book, against its partner, and, where it should be nothing, against a limit alone.</summary>
internal static class PartComparisons
{
    public static IReadOnlyList<DimensionAnswer> Of(BenchCase part)
    {
        var answers = part.Reduction.Dimensions.Select(d => new DimensionAnswer(d, [.. All(part, d)])).ToList();
        // Seen back to back without being measured by itself: the difference is all there is.
        foreach (var side in part.Reduction.SideDifferences.Where(s => part.Reduction.Dimension(s.Dimension) is null))
        {
            answers.Add(new DimensionAnswer(side, part.IsOfAnotherTypeThanPartner ? [] : [Mirror(part, side, null, side.Si, side.U)]));
        }

        return answers;
    }

    private static IEnumerable<Comparison> All(BenchCase part, DimensionValue value)
    {
        if (part.BookVariant is { } variant && variant.Figure(value.Dimension) is { } figure && figure.Nominal.Quantity == value.Quantity)
        {
            var limit = figure.Tolerance is { } tolerance
                ? new UsedLimit(tolerance.Si, figure.Source, figure.Note)
                : Limit(part.Part, value);
            yield return Comparison.Of(
                ComparedWith.Book,
                variant.Name,
                figure.Nominal.Si,
                value.Si - figure.Nominal.Si,
                value.U,
                limit,
                value.Nature
            );
        }

        if (value.IsPaired && SideDifference(part, value) is { } side && !part.IsOfAnotherTypeThanPartner)
        {
            yield return Mirror(part, value, part.Partner?.Reduction.Dimension(value.Dimension)?.Si, side.Difference, side.U);
        }

        if (value.ShouldBeNothing || value.Nature is DimensionNature.Clearance or DimensionNature.Grip)
        {
            yield return Comparison.Of(ComparedWith.Itself, null, null, value.Si, value.U, Limit(part.Part, value), value.Nature);
        }
    }

    private static Comparison Mirror(BenchCase part, DimensionValue value, double? other, double difference, double u) =>
        Comparison.Of(ComparedWith.Mirror, part.Part.Mirror, other, difference, u, Limit(part.Part, value), value.Nature);

    // Seen directly where both were laid together, on either part's card; else the difference of both measured values.
    private static (double Difference, double U)? SideDifference(BenchCase part, DimensionValue value)
    {
        if (part.Reduction.SideDifferences.FirstOrDefault(s => s.Dimension == value.Dimension) is { } seen)
        {
            return (seen.Si, seen.U);
        }

        if (part.Partner?.Reduction.SideDifferences.FirstOrDefault(s => s.Dimension == value.Dimension) is { } there)
        {
            return (-there.Si, there.U);
        }

        return part.Partner?.Reduction.Dimension(value.Dimension) is { } other && other.Quantity == value.Quantity
            ? (value.Si - other.Si, value.UOfDifference(other))
            : null;
    }

    /// <summary>The owner's limit, else that of practice, else none.</summary>
    private static UsedLimit? Limit(Part part, DimensionValue value)
    {
        var own = part.Limits.FirstOrDefault(l => l.Dimension == value.Dimension && l.Within.Quantity == value.Quantity);
        return own is not null ? new UsedLimit(own.Within.Si, own.Source, own.Note) : PracticeLimits.For(part.Kind, value);
    }
}
