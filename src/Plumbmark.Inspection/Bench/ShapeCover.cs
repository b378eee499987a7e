using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>How much of a part's shape its measures tell. One true dimension of an arm says nothing of the bends that it cannot see.</summary>
/// <param name="IsEnough">Whether what was measured tells that it is straight: every thing that a bench at home can see of its kind, or every figure that the book gives for its type.</param>
/// <param name="Told">The dimensions that bending changes and that were held against something.</param>
/// <param name="HeldAgainstNothing">Those that were measured, but nothing is known to hold them against.</param>
/// <param name="Missing">What a bench at home can see of its kind, and was not told.</param>
internal sealed record ShapeCover(
    bool IsEnough,
    IReadOnlyList<string> Told,
    IReadOnlyList<string> HeldAgainstNothing,
    IReadOnlyList<PartGuide> Missing
)
{
    public static ShapeCover Of(BenchCase part, IReadOnlyList<DimensionAnswer> dimensions)
    {
        var kind = part.Part.Kind;
        var held = dimensions.Where(IsHeld).ToList();
        if (!BendsAreSought(kind))
        {
            return new(held.Any(d => TellsSomething(kind, d.Value)), [], [], []);
        }

        var (told, untold) = (Names(dimensions.Where(IsHeld)), Names(dimensions.Where(d => !IsHeld(d))));
        List<PartGuide> missing =
        [
            .. PartGuide.For(kind).Where(g => g.IsWanted && !held.Any(d => g.IsSettledBy(d.Value, IsHeight(part, d)))),
        ];
        return new(told.Count > 0 && (missing.Count == 0 || HasWholeBook(part, held)), told, untold, missing);
    }

    // Wear decides on a pin, a bush, a trunnion and a spring; and nobody knows where a part of one's own bends.
    private static bool BendsAreSought(PartKind kind) =>
        kind is not (PartKind.Bush or PartKind.FulcrumPin or PartKind.Trunnion or PartKind.CoilSpring or PartKind.Own);

    private static bool TellsSomething(PartKind kind, DimensionValue value) => kind != PartKind.Own || value.IsBendable;

    // A difference that is put down to the other part says as much of this one as a true comparison.
    private static bool IsHeld(DimensionAnswer d) =>
        d.Comparisons.Any(c => c.Limit is not null && (c.Verdict == Verdict.True || c.PutDownTo is not null));

    /// <summary>Whether a dimension is a height over a clamped face: by its name, or because it was measured so.</summary>
    public static bool IsHeight(BenchCase part, DimensionAnswer d) =>
        d.Value.Dimension.Contains("height", StringComparison.OrdinalIgnoreCase)
        || part.Part.StandingMeasures.OfType<Measure.Heights>().Any(m => d.Value.Measures.Contains(m.Id));

    private static bool HasWholeBook(BenchCase part, List<DimensionAnswer> held)
    {
        var figures = part.BookVariant?.Figures.Where(f => DimensionWords.IsBendable(f.Dimension)).ToList() ?? [];
        return figures.Count > 0 && figures.All(f => held.Any(d => d.Value.Dimension == f.Dimension));
    }

    private static List<string> Names(IEnumerable<DimensionAnswer> dimensions) =>
        [.. dimensions.Where(d => d.Value.IsBendable).Select(d => d.Value.Dimension)];
}
