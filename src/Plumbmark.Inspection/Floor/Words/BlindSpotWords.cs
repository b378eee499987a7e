using Plumbmark.Inspection.Floor.Forms;

namespace Plumbmark.Inspection.Floor;

/// <summary>What the readings so far could not have shown, and which would.</summary>
internal static class BlindSpotWords
{
    private const int MostPoints = 6; // named one by one; more are counted

    public const string SagAlike =
        "Both rails could sag alike beyond the limit without showing, because left is compared with right; the book's heights would show it.";

    public static string Form(DamageForm form) =>
        form switch
        {
            DamageForm.Sidesway => "Sidesway beyond the limit would not show yet; lengths and diagonals of the short bays would show it.",
            DamageForm.Diamond => "A diamond beyond the limit would not show yet; both diagonals of each bay would show it.",
            DamageForm.Mash => "One side pushed short beyond the limit would not show yet; lengths along both sides would show it.",
            DamageForm.Twist =>
                "Twist beyond the limit would not show yet, however equal the diagonals are; heights on both sides at both ends would show it.",
            _ => "Sag of one rail beyond the limit would not show yet; heights along both rails would show it.",
        };

    public static string Point(string point, string direction) =>
        direction == "height"
            ? $"{point} could be bent up or down beyond the limit without showing; its height and its partner's would show it."
            : $"{point} could be bent sideways or along beyond the limit without showing; more lengths to it, or another drop, would show it.";

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
            yield return $"{Capital(Words.And(inPlan))} could still hide, which is beyond the limit: lengths along both sides and both diagonals of each bay would show {It(inPlan)}.";
        }

        var inHeight = Sized(forms.Where(f => f.Form is "twist" or "sag"), words);
        if (inHeight.Count > 0)
        {
            yield return $"{Capital(Words.And(inHeight))} could still hide, which is beyond the limit, however equal the diagonals are: heights on both sides would show {It(inHeight)}.";
        }

        foreach (var group in blind.Where(b => b.Point is not null).GroupBy(b => b.Direction))
        {
            var points = group.Select(b => b.Point!).ToList();
            var named = points.Count <= MostPoints ? Words.And(points) : Words.Count(points.Count, "point");
            yield return group.Key == "height"
                ? $"{named} could be bent up or down beyond the limit without showing."
                : $"{named} could be bent sideways or along beyond the limit without showing.";
        }
    }

    /// <summary>Each form with how much of it could hide.</summary>
    private static List<string> Sized(IEnumerable<BlindSpot> forms, LengthWords words) =>
        [.. forms.Select(f => f.SmallestSeenMetres is { } seen ? $"{f.Form} up to {words.Within(seen)}" : $"{f.Form} of any size")];

    private static string It(List<string> forms) => forms.Count == 1 ? "it" : "them";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
