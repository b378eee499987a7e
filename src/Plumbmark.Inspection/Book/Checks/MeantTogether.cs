namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Whether one car can be meant by two figures at once.</summary>
internal static class MeantTogether
{
    /// <summary>False only where their serial ranges lie apart or they ask for different equipment.</summary>
    public static bool Are(BookDimension a, BookDimension b) =>
        !LieApart(a.AppliesTo, b.AppliesTo) && !AskDifferently(a.AppliesTo, b.AppliesTo);

    private static bool LieApart(AppliesTo a, AppliesTo b) =>
        a.Serials.Count > 0
        && b.Serials.Count > 0
        && a.Serials.All(x => b.Serials.All(y => x.With(y) is SerialOverlap.None || Series(x) != Series(y)));

    // Cars of two series are two cars.
    private static string? Series(SerialRange range) => (range.From ?? range.To)?.Series;

    private static bool AskDifferently(AppliesTo a, AppliesTo b) =>
        a
            .Attributes.GroupBy(x => x.Name, StringComparer.OrdinalIgnoreCase)
            .Any(g =>
            {
                var asked = b.Attributes.Where(y => string.Equals(y.Name, g.Key, StringComparison.OrdinalIgnoreCase)).ToList();
                return asked.Count > 0
                    && !asked.Exists(y => g.Any(x => string.Equals(x.Value.Trim(), y.Value.Trim(), StringComparison.OrdinalIgnoreCase)));
            });
}
