using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>How to bring down a point that cannot be dropped, in sentences.</summary>
internal static class ObstructedWords
{
    public static IReadOnlyList<string> Asks(string way, string point, IReadOnlyList<string> others) =>
        way switch
        {
            "midpoint" => [Texts.Say("floor.obstructed.the-mark-of-one-drop", point), Texts.Say("floor.obstructed.the-mark-of-the-other")],
            "offset" =>
            [
                Texts.Say("floor.obstructed.the-mark-under-the-bar"),
                Texts.Say("floor.obstructed.how-far-forward-minus-back", point),
                Texts.Say("floor.obstructed.how-far-to-the-left", point),
            ],
            "bar" =>
            [
                Texts.Say("floor.obstructed.the-mark-under-the-bars", point),
                Texts.Say("floor.obstructed.the-mark-under-its-other"),
                Texts.Say("floor.obstructed.how-far-the-end-stands", point),
            ],
            "trammel" =>
            [
                .. others.Select(o => Texts.Say("floor.obstructed.the-length-from-to-point", o, point)),
                Texts.Say("floor.obstructed.the-heights-of", Words.And([.. others, point])),
            ],
            _ => [],
        };

    public static string Sentence(string way, string point, IReadOnlyList<string> others, double u, double plain, LengthWords words)
    {
        var cost = Texts.Say("floor.obstructed.each-way-where-a-plain", words.SureToWords(u), words.SureTo(plain));
        return way switch
        {
            "midpoint" => Texts.Say("floor.obstructed.drop-twice-equally-far-to", point, cost),
            "offset" => Texts.Say("floor.obstructed.clamp-a-square-bar-at", point, cost),
            "bar" => Texts.Say("floor.obstructed.put-a-straight-bar-through", point, others[0], cost),
            "trammel" => Texts.Say("floor.obstructed.leave-the-drop-out-and", point, Words.And(others), cost),
            _ => Texts.Say("floor.obstructed.move-what-is-in-the", words.SureTo(plain)),
        };
    }
}
