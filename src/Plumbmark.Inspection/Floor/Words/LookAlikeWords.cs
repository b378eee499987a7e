using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>What looks like damage and is none, and how to tell.</summary>
internal static class LookAlikeWords
{
    public static string HeightsFromFloor => Texts.Say("floor.look-alike.heights-were-read-from-the");

    public static string NotLevel(double acrossMetres, LengthWords words) =>
        Texts.Say(
            "floor.look-alike.every-pair-stands-higher-on",
            acrossMetres > 0 ? Texts.Say("floor.look-alike.left") : Texts.Say("floor.look-alike.right"),
            words.Size(acrossMetres)
        );

    public static string CentreLine(string end, string other, string thrown, double metres, LengthWords words) =>
        Texts.Say(
            "floor.look-alike.a-centre-line-drawn-from",
            end,
            other,
            thrown,
            words.Size(metres),
            metres > 0 ? Texts.Say("floor.look-alike.left") : Texts.Say("floor.look-alike.right")
        );

    /// <summary>What the form is taken for most often, with what tells the two apart.</summary>
    public static (string Kind, string Sentence) OfForm(DamagePart part, LengthWords words) =>
        part.Form switch
        {
            DamageForm.TapeScale => (
                "tape-scale",
                Texts.Say(
                    "floor.look-alike.every-length-is-against-the",
                    part.AmountMetres > 0 ? Texts.Say("floor.look-alike.long") : Texts.Say("floor.look-alike.short"),
                    Texts.Number(Math.Abs(part.AmountMetres) * 100, "0.0")
                )
            ),
            DamageForm.Lean => ("lean", Texts.Say("floor.look-alike.all-high-points-lean-the")),
            DamageForm.Twist => ("four-stands", Texts.Say("floor.look-alike.a-frame-wound-up-on")),
            DamageForm.Sag => ("end-supports", Texts.Say("floor.look-alike.a-bare-frame-hung-at")),
            DamageForm.Mash => ("hole-edge", Texts.Say("floor.look-alike.marks-taken-at-another-edge")),
            DamageForm.Diamond => ("tape-start", Texts.Say("floor.look-alike.diagonals-all-begun-at-another")),
            DamageForm.Sidesway => ("centre-line", Texts.Say("floor.look-alike.measuring-the-centre-line-from")),
            _ => ("point-or-drop", PointOrDrop(part, words)),
        };

    /// <summary>A bad drop moves a mark in plan; a height it leaves alone.</summary>
    private static string PointOrDrop(DamagePart part, LengthWords words)
    {
        const double Counts = 0.3; // of the whole displacement
        var where = part.IsPair ? Texts.Say("floor.look-alike.pair", part.From) : part.From;
        var again = part.IsPair
            ? Texts.Say("floor.look-alike.drop-both-its-points-once")
            : Texts.Say("floor.look-alike.drop-it-once-more-that");
        var up = part.MovedMetres.Count == 3 ? part.MovedMetres[2] : 0;
        if (Math.Abs(up) < Math.Max(Counts * part.AmountMetres, words.DivisionMetres / 2))
        {
            return Texts.Say("floor.look-alike.one-bad-drop-at-looks", where, again);
        }

        return double.Hypot(part.MovedMetres[0], part.MovedMetres[1]) > words.DivisionMetres / 2
            ? Texts.Say("floor.look-alike.one-bad-drop-at-would", where, words.Size(up), again)
            : Texts.Say("floor.look-alike.one-height-read-wrong-at", where);
    }
}
