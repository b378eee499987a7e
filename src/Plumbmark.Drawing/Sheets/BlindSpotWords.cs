using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>Blind spots as sentences; what is said of several points in the same words is said once, of all of them.</summary>
internal static class BlindSpotWords
{
    private const string Place = "\0";

    public static IEnumerable<string> Of(IReadOnlyList<BlindSpot> spots) =>
        spots
            .Select(s => (s.Point, Pattern: s.Point is { } point ? s.Sentence.Replace(point, Place, StringComparison.Ordinal) : s.Sentence))
            .GroupBy(s => s.Pattern, StringComparer.Ordinal)
            .Select(g => g.Key.Replace(Place, string.Join(", ", g.Select(s => s.Point)), StringComparison.Ordinal));
}
