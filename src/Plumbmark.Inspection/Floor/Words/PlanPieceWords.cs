using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Which points hang together and with nothing else, and what would tie them.</summary>
internal static class PlanPieceWords
{
    private const int MostNamed = 8;

    public static string Apart(IReadOnlyList<string> piece, IReadOnlyList<string> rest, IReadOnlyList<string> readings)
    {
        // Two stiff pieces are tied in plan by three lengths between them that do not meet in one point.
        (string, string)[] ties = [(piece[0], rest[0]), (piece[^1], rest[0]), (piece[0], rest[^1])];
        var measure = Words.And([.. ties.Select(t => Texts.Say("floor.plan-piece.to", t.Item1, t.Item2))]);
        return Texts.Say("floor.plan-piece.nothing-ties-readings-to-their", Named(piece), Named(readings), Named(rest), measure);
    }

    private static string Named(IReadOnlyList<string> names) =>
        names.Count <= MostNamed
            ? Words.And(names)
            : Texts.Say("floor.plan-piece.and-more", string.Join(", ", names.Take(MostNamed - 1)), names.Count - MostNamed + 1);
}
