using Plumbmark.Inspection.Floor.Forms;

namespace Plumbmark.Inspection.Floor;

/// <summary>What looks like damage and is none, and how to tell.</summary>
internal static class LookAlikeWords
{
    public const string HeightsFromFloor =
        "Heights were read from the floor: a floor that falls to a drain tilts them all. A water level, or the floor's own heights, would take that out.";

    public static string NotLevel(double acrossMetres, LengthWords words) =>
        $"Every pair stands higher on the {(acrossMetres > 0 ? "left" : "right")} by the same slope, {words.Size(acrossMetres)} across the frame: that is how it sits on its stands, not damage, and it has been taken out.";

    public static string CentreLine(string end, string other, string thrown, double metres, LengthWords words) =>
        $"A centre line drawn from the middle of {end} to the middle of {other} would throw {thrown} {words.Size(metres)} to the {(metres > 0 ? "left" : "right")} and make the whole frame look swayed. The middles of the other pairs agree on another line; {end} alone leaves it.";

    /// <summary>What the form is taken for most often, with what tells the two apart.</summary>
    public static (string Kind, string Sentence) OfForm(DamagePart part, LengthWords words) =>
        part.Form switch
        {
            DamageForm.TapeScale => (
                "tape-scale",
                $"Every length is {(part.AmountMetres > 0 ? "long" : "short")} against the book by the same share, {Math.Abs(part.AmountMetres) * 100:0.0} %: a stretched tape, a wrong unit or another edition looks like this. Check the tape against a good rule."
            ),
            DamageForm.Lean => (
                "lean",
                "All high points lean the same way in step with their height: plumb line and level do not agree, as when a frame is set parallel to a sloping floor. Level it to the bubble and drop the high points again."
            ),
            DamageForm.Twist => (
                "four-stands",
                "A frame wound up on four stands until all touch looks twisted, or hides its twist. Stand it on three, bring the fourth up until it just touches, and read the heights again."
            ),
            DamageForm.Sag => (
                "end-supports",
                "A bare frame hung at its ends droops. Note where the stands are; the book says where it was carried when drawn."
            ),
            DamageForm.Mash => (
                "hole-edge",
                "Marks taken at another edge of the holes on one side look the same. Look at one hole on each side before believing it."
            ),
            DamageForm.Diamond => (
                "tape-start",
                "Diagonals all begun at another graduation than the sides look the same. Begin one diagonal again at the same graduation."
            ),
            DamageForm.Sidesway => (
                "centre-line",
                "Measuring the centre line from another pair moves the sway to the other end. It is drawn here through the pairs that agree."
            ),
            _ => ("point-or-drop", PointOrDrop(part, words)),
        };

    /// <summary>A bad drop moves a mark in plan; a height it leaves alone.</summary>
    private static string PointOrDrop(DamagePart part, LengthWords words)
    {
        const double Counts = 0.3; // of the whole displacement
        var where = part.IsPair ? $"pair {part.From}" : part.From;
        var again = part.IsPair ? "Drop both its points once more; that decides." : "Drop it once more; that decides.";
        var up = part.MovedMetres.Count == 3 ? part.MovedMetres[2] : 0;
        if (Math.Abs(up) < Math.Max(Counts * part.AmountMetres, words.DivisionMetres / 2))
        {
            return $"One bad drop at {where} looks the same. {again}";
        }

        return double.Hypot(part.MovedMetres[0], part.MovedMetres[1]) > words.DivisionMetres / 2
            ? $"One bad drop at {where} would look the same on the floor, though not in height, where {words.Size(up)} stays. {again}"
            : $"One height read wrong at {where} looks the same. Take it once more.";
    }
}
