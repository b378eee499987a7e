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
                $"One point of pair {part.From} is {size} from where it should be, or both share it. Left against right cannot say which of the two moved; the book's figure for either of them, or the same lengths on a sound frame of the make, can.",
            DamageForm.Point =>
                $"{part.From} alone is {size} from where it should be; everything else fits. Bent there, or plumbed wrong: drop that point once more before believing it.",
            DamageForm.TapeScale => "Every length is off from the book by the same share: the tape, or the unit, before the frame.",
            _ => "High points lean over in step with their height: plumb line and level do not agree, before the frame.",
        };
    }

    private static string Side(double leftPositive) => leftPositive >= 0 ? "left" : "right";
}
