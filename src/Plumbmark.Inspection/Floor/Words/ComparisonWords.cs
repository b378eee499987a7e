using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>One length held against its mirror image, in words.</summary>
internal static class ComparisonWords
{
    public static string Sentence(
        string from,
        string to,
        bool isDiagonal,
        double differenceMetres,
        double uMetres,
        (string From, string To) first,
        LengthWords words
    )
    {
        var sure = Texts.Say("floor.comparison.sure-to", words.SureTo(uMetres));
        var isWithinNoise = Math.Abs(differenceMetres) <= 2 * uMetres;
        if (isWithinNoise)
        {
            return isDiagonal
                ? Texts.Say("floor.comparison.the-diagonals-to-agree-within", from, to, words.Within(differenceMetres), sure)
                : Texts.Say("floor.comparison.to-agrees-side-to-side", from, to, words.Within(differenceMetres), sure);
        }

        return isDiagonal
            ? Texts.Say(
                "floor.comparison.of-the-diagonals-to-by",
                from,
                to,
                differenceMetres > 0
                    ? Texts.Say("floor.comparison.to-is-longer", first.From, first.To)
                    : Texts.Say("floor.comparison.to-is-shorter", first.From, first.To),
                words.Size(differenceMetres),
                sure
            )
            : Texts.Say(
                "floor.comparison.to-is-longer-on-the",
                from,
                to,
                words.Size(differenceMetres),
                differenceMetres > 0 ? Texts.Say("floor.comparison.left") : Texts.Say("floor.comparison.right"),
                sure
            );
    }
}
