namespace Plumbmark.Inspection.Floor;

/// <summary>How to bring down a point that cannot be dropped, in sentences.</summary>
internal static class ObstructedWords
{
    public static IReadOnlyList<string> Asks(string way, string point, IReadOnlyList<string> others) =>
        way switch
        {
            "midpoint" => [$"the mark of one drop beside {point}", "the mark of the other, equally far on the other side"],
            "offset" =>
            [
                "the mark under the bar",
                $"how far forward (minus: back) {point} lies from it",
                $"how far to the left (minus: right) {point} lies from it",
            ],
            "bar" =>
            [
                $"the mark under the bar's end on the side of {point}",
                "the mark under its other end",
                $"how far the end stands out from {point}",
            ],
            "trammel" =>
            [
                .. others.Select(o => $"the length from {o} to {point}, point to point"),
                $"the heights of {Words.And([.. others, point])}",
            ],
            _ => [],
        };

    public static string Sentence(string way, string point, IReadOnlyList<string> others, double u, double plain, LengthWords words)
    {
        var cost = $"{words.SureToWords(u)} each way, where a plain drop gives {words.SureTo(plain)}";
        return way switch
        {
            "midpoint" => $"Drop twice, equally far to either side of {point}, and take the middle: {cost}.",
            "offset" =>
                $"Clamp a square bar at {point} and drop from it where the way is free. Measure the step from the mark to the point with its direction, forward and left; a step left out or with the wrong sign is off by exactly that much: {cost}.",
            "bar" => $"Put a straight bar through {point} and {others[0]} and drop from both its ends: {cost}.",
            "trammel" =>
                $"Leave the drop out and set a trammel to {point} from {Words.And(others)}, point to point, with the heights of all four: {cost}.",
            _ =>
                $"Move what is in the way and level again. If it is a stand, every mark made so far belongs to the old standing: drop two of the old points again to see that nothing moved. Then {words.SureTo(plain)} as usual.",
        };
    }
}
