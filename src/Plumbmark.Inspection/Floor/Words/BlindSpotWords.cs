using Plumbmark.Inspection.Floor.Forms;

namespace Plumbmark.Inspection.Floor;

/// <summary>What the readings so far could not have shown, and which would.</summary>
internal static class BlindSpotWords
{
    public static string Form(DamageForm form) =>
        form switch
        {
            DamageForm.Sidesway => "Sidesway beyond the limit would not show yet: lengths and diagonals of the short bays would show it.",
            DamageForm.Diamond => "A diamond beyond the limit would not show yet: both diagonals of each bay would show it.",
            DamageForm.Mash => "One side pushed short beyond the limit would not show yet: lengths along both sides would show it.",
            DamageForm.Twist =>
                "Twist beyond the limit would not show yet, however equal the diagonals are: heights on both sides at both ends would show it.",
            DamageForm.Sag => "Sag of one rail beyond the limit would not show yet: heights along both rails would show it.",
            _ => "Damage beyond the limit would not show yet.",
        };

    public static string Point(string point, string direction) =>
        direction == "height"
            ? $"{point} could be bent up or down beyond the limit without showing: its height and its partner's would show it."
            : $"{point} could be bent sideways or along beyond the limit without showing: more lengths to it, or another drop, would show it.";
}
