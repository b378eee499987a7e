using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>A slip in one figure that would explain a finding. A hint for the person, never a correction.</summary>
/// <param name="Dimension">The figure's name on its page.</param>
/// <param name="Printed">What is printed.</param>
/// <param name="Likely">What the drawing may have said.</param>
/// <param name="Kind">How the one became the other.</param>
public sealed record LikelySlip(string Dimension, Length Printed, Length Likely, SlipKind Kind)
{
    /// <summary>Such as <c>K: 33 5/8 printed for 33 3/8, the fraction counted from its other end</c>.</summary>
    public string Words => Texts.Say("book.likely-slip.printed-for", Dimension, Printed.AsTyped, Likely.AsTyped, Because);

    private string Because =>
        Kind switch
        {
            SlipKind.LookAlikeDigit => Texts.Say("book.likely-slip.one-digit-taken-for-another"),
            SlipKind.FractionLost => Texts.Say("book.likely-slip.a-scan-made-8-of"),
            SlipKind.DigitsSwapped => Texts.Say("book.likely-slip.two-digits-changed-places"),
            SlipKind.OtherEnd => Texts.Say("book.likely-slip.the-fraction-counted-from-its"),
            SlipKind.OtherDivision => Texts.Say("book.likely-slip.the-fraction-in-another-division"),
            SlipKind.WholeStep => Texts.Say("book.likely-slip.a-whole-step-too-many"),
            SlipKind.PointMoved => Texts.Say("book.likely-slip.the-decimal-point-one-place"),
            SlipKind.HalfOrDouble => Texts.Say("book.likely-slip.half-for-the-whole-or"),
            _ => Texts.Say("book.likely-slip.in-plan-for-point-to"),
        };
}
