using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>What each form of damage looks like, in trade words.</summary>
internal static class DamageWords
{
    public static string Sentence(DamagePart part, LengthWords words)
    {
        var size = $"{words.Size(part.AmountMetres)} ({words.SureTo(part.UMetres)})";
        return part.Form switch
        {
            DamageForm.Sidesway => Texts.Say("floor.damage.sidesway-from-station-outward-the", part.From, size, Side(part.AmountMetres)),
            DamageForm.Diamond => Texts.Say("floor.damage.diamond-the-rail-stands-ahead", Side(part.AmountMetres), size),
            DamageForm.Mash => Texts.Say("floor.damage.mash-one-side-is-short", size, part.From),
            DamageForm.Twist => Texts.Say("floor.damage.twist-the-front-end-stands", size, Side(part.AmountMetres)),
            DamageForm.Sag when part.AmountMetres < 0 => Texts.Say("floor.damage.humped-station-stands-above-the", part.From, size),
            DamageForm.Sag => Texts.Say("floor.damage.sag-station-hangs-below-the", part.From, size),
            DamageForm.Point when part.IsPair => Texts.Say("floor.damage.one-point-of-pair-is", part.From, size, Either(part, words)),
            DamageForm.Point => Texts.Say(
                "floor.damage.alone-is-from-where-it",
                part.From,
                size,
                Ways(part.MovedMetres, part.IsLeft, words)
            ),
            DamageForm.TapeScale => Texts.Say("floor.damage.every-length-is-off-from"),
            _ => Texts.Say("floor.damage.high-points-lean-over-in"),
        };
    }

    /// <summary>Which way either point of a pair must have moved, if it was that one.</summary>
    private static string Either(DamagePart part, LengthWords words)
    {
        if (part.Pair is not var (left, right))
        {
            return "";
        }

        // What the right one did, the left one did mirrored: back for forward and down for up, and to the same side.
        var (x, y, z) = (part.MovedMetres[0], part.MovedMetres[1], part.MovedMetres[2]);
        var (own, other) = (new[] { x, y, z }, new[] { -x, y, -z });
        var (ofLeft, ofRight) = part.IsLeft ? (own, other) : (other, own);
        return Texts.Say("floor.damage.or", left, Ways(ofLeft, true, words, " "), right, Ways(ofRight, false, words, " "));
    }

    /// <summary>The directions that count, in words: inward 5/16 in and down 3/16 in.</summary>
    private static string Ways(IReadOnlyList<double> moved, bool isLeft, LengthWords words, string lead = ": ")
    {
        const double Counts = 0.3; // of the longest: less is not worth a word
        if (moved.Count < 3)
        {
            return "";
        }

        var most = moved.Max(Math.Abs);
        string[] names =
        [
            moved[0] > 0 ? Texts.Say("floor.damage.forward") : Texts.Say("floor.damage.back"),
            moved[1] > 0 == isLeft ? Texts.Say("floor.damage.outward") : Texts.Say("floor.damage.inward"),
            moved[2] > 0 ? Texts.Say("floor.damage.up") : Texts.Say("floor.damage.down"),
        ];
        var ways = Enumerable
            .Range(0, 3)
            .Where(a => Math.Abs(moved[a]) >= Math.Max(Counts * most, words.DivisionMetres / 2))
            .Select(a => $"{words.Size(moved[a])} {names[a]}")
            .ToList();
        return ways.Count == 0 ? "" : lead + Words.And(ways);
    }

    private static string Side(double leftPositive) => leftPositive >= 0 ? Texts.Say("floor.damage.left") : Texts.Say("floor.damage.right");
}
