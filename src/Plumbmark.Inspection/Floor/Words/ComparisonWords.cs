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
        var sure = $"sure to {words.SureTo(uMetres)}";
        var isWithinNoise = Math.Abs(differenceMetres) <= 2 * uMetres;
        if (isWithinNoise)
        {
            return isDiagonal
                ? $"The diagonals {from} to {to} agree within {words.Within(differenceMetres)}, {sure}."
                : $"{from} to {to} agrees side to side within {words.Within(differenceMetres)}, {sure}.";
        }

        return isDiagonal
            ? $"Of the diagonals {from} to {to}, {(differenceMetres > 0 ? $"{first.From} to {first.To} is longer" : $"{first.From} to {first.To} is shorter")} by {words.Size(differenceMetres)}, {sure}."
            : $"{from} to {to} is {words.Size(differenceMetres)} longer on the {(differenceMetres > 0 ? "left" : "right")}, {sure}.";
    }
}
