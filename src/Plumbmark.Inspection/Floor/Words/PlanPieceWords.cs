namespace Plumbmark.Inspection.Floor;

/// <summary>Which points hang together and with nothing else, and what would tie them.</summary>
internal static class PlanPieceWords
{
    private const int MostNamed = 8;

    public static string Apart(IReadOnlyList<string> piece, IReadOnlyList<string> rest, IReadOnlyList<string> readings)
    {
        // Two stiff pieces are tied in plan by three lengths between them that do not meet in one point.
        (string, string)[] ties = [(piece[0], rest[0]), (piece[^1], rest[0]), (piece[0], rest[^1])];
        var measure = Words.And([.. ties.Select(t => $"{t.Item1} to {t.Item2}")]);
        return $"Nothing ties {Named(piece)} (readings {Named(readings)}) to {Named(rest)}: their places to each other stay open. Three lengths between them would tie them, for example {measure}.";
    }

    private static string Named(IReadOnlyList<string> names) =>
        names.Count <= MostNamed
            ? Words.And(names)
            : $"{string.Join(", ", names.Take(MostNamed - 1))} and {names.Count - MostNamed + 1} more";
}
