using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>What the readings so far could not have shown, and which would.</summary>
internal static class BlindSpotWords
{
    private const int MostPoints = 6; // named one by one; more are counted

    public static string SagAlike => Texts.Say("floor.blind-spot.both-rails-could-sag-alike");

    public static string Form(DamageForm form) =>
        form switch
        {
            DamageForm.Sidesway => Texts.Say("floor.blind-spot.sidesway-beyond-the-limit-would"),
            DamageForm.Diamond => Texts.Say("floor.blind-spot.a-diamond-beyond-the-limit"),
            DamageForm.Mash => Texts.Say("floor.blind-spot.one-side-pushed-short-beyond"),
            DamageForm.Twist => Texts.Say("floor.blind-spot.twist-beyond-the-limit-would"),
            _ => Texts.Say("floor.blind-spot.sag-of-one-rail-beyond"),
        };

    public static string Point(string point, string direction) =>
        direction == "height"
            ? Texts.Say("floor.blind-spot.could-be-bent-up-or", point)
            : Texts.Say("floor.blind-spot.could-be-bent-sideways-or", point);

    /// <summary>All blind spots in a few sentences: forms in plan, forms in height, points.</summary>
    public static IEnumerable<string> Together(IReadOnlyList<BlindSpot> blind, LengthWords words)
    {
        if (blind.Any(b => b.Direction == "alike"))
        {
            yield return SagAlike;
        }

        var forms = blind.Where(b => b is { Point: null, Direction: not "alike" }).ToList();
        var inPlan = Sized(forms.Where(f => f.Form is "sidesway" or "diamond" or "mash"), words);
        if (inPlan.Count > 0)
        {
            yield return Texts.Say("floor.blind-spot.could-still-hide-which-is", Capital(Words.And(inPlan)), It(inPlan));
        }

        var inHeight = Sized(forms.Where(f => f.Form is "twist" or "sag"), words);
        if (inHeight.Count > 0)
        {
            yield return Texts.Say(
                "floor.blind-spot.could-still-hide-which-is-beyond-the-limit-however",
                Capital(Words.And(inHeight)),
                It(inHeight)
            );
        }

        foreach (var group in blind.Where(b => b.Point is not null).GroupBy(b => b.Direction))
        {
            var points = group.Select(b => b.Point!).ToList();
            var named = points.Count <= MostPoints ? Words.And(points) : Texts.Count("floor.blind-spot.points", points.Count);
            yield return group.Key == "height"
                ? Texts.Say("floor.blind-spot.could-be-bent-up-or-down-beyond-the-limit", named)
                : Texts.Say("floor.blind-spot.could-be-bent-sideways-or-along-beyond-the-limit", named);
        }
    }

    /// <summary>Each form with how much of it could hide.</summary>
    private static List<string> Sized(IEnumerable<BlindSpot> forms, LengthWords words) =>
        [
            .. forms.Select(f =>
                f.SmallestSeenMetres is { } seen
                    ? Texts.Say("floor.blind-spot.up-to", f.Form, words.Within(seen))
                    : Texts.Say("floor.blind-spot.of-any-size", f.Form)
            ),
        ];

    private static string It(List<string> forms) =>
        forms.Count == 1 ? Texts.Say("floor.blind-spot.it") : Texts.Say("floor.blind-spot.them");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
