using Plumbmark.Inspection.Floor.Forms;

namespace Plumbmark.Inspection.Floor;

/// <summary>What each form of damage looks like, in trade words.</summary>
internal static class DamageWords
{
    public static string Sentence(DamagePart part, LengthWords words)
    {
        var size = $"{words.Size(part.AmountMetres)} ({words.SureTo(part.UMetres)})";
        return part.Form switch
        {
            DamageForm.Sidesway =>
                $"Sidesway: from station {part.From} outward the middles stand {size} to the {Side(part.AmountMetres)} of the centre line.",
            DamageForm.Diamond =>
                $"Diamond: the {Side(part.AmountMetres)} rail stands {size} ahead of the other all along; every cross-line is out of square the same way.",
            DamageForm.Mash => $"Mash: one side is {size} short from station {part.From} outward.",
            DamageForm.Twist => $"Twist: the front end stands {size} higher on the {Side(part.AmountMetres)} than the rear end does.",
            DamageForm.Sag when part.AmountMetres < 0 => $"Humped: station {part.From} stands {size} above the line through the ends.",
            DamageForm.Sag => $"Sag: station {part.From} hangs {size} below the line through the ends.",
            DamageForm.Point when part.IsPair =>
                $"One point of pair {part.From} is {size} from where it should be{Either(part, words)}, or both share it. Left against right cannot say which moved; the book's figure for either of them, or the same lengths on a sound frame of the make, can.",
            DamageForm.Point =>
                $"{part.From} alone is {size} from where it should be{Ways(part.MovedMetres, part.IsLeft, words)}; everything else fits. Bent there, or plumbed wrong: drop that point once more before believing it.",
            DamageForm.TapeScale => "Every length is off from the book by the same share: the tape, or the unit, before the frame.",
            _ => "High points lean over in step with their height: plumb line and level do not agree, before the frame.",
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
        return $": {left}{Ways(ofLeft, true, words, " ")}, or {right}{Ways(ofRight, false, words, " ")}";
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
        string[] names = [moved[0] > 0 ? "forward" : "back", moved[1] > 0 == isLeft ? "outward" : "inward", moved[2] > 0 ? "up" : "down"];
        var ways = Enumerable
            .Range(0, 3)
            .Where(a => Math.Abs(moved[a]) >= Math.Max(Counts * most, words.DivisionMetres / 2))
            .Select(a => $"{words.Size(moved[a])} {names[a]}")
            .ToList();
        return ways.Count == 0 ? "" : lead + Words.And(ways);
    }

    private static string Side(double leftPositive) => leftPositive >= 0 ? "left" : "right";
}
