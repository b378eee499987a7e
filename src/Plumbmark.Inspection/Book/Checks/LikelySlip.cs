using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>A slip in one figure that would explain a finding. A hint for the person, never a correction.</summary>
/// <param name="Dimension">The figure's name on its page.</param>
/// <param name="Printed">What is printed.</param>
/// <param name="Likely">What the drawing may have said.</param>
/// <param name="Kind">How the one became the other.</param>
public sealed record LikelySlip(string Dimension, Length Printed, Length Likely, SlipKind Kind)
{
    /// <summary>Such as <c>K: 33 5/8 printed for 33 3/8, the fraction counted from its other end</c>.</summary>
    public string Words => $"{Dimension}: {Printed.AsTyped} printed for {Likely.AsTyped}, {Because}";

    private string Because =>
        Kind switch
        {
            SlipKind.LookAlikeDigit => "one digit taken for another that looks like it",
            SlipKind.FractionLost => "a scan made 8 of 1/8",
            SlipKind.DigitsSwapped => "two digits changed places",
            SlipKind.OtherEnd => "the fraction counted from its other end",
            SlipKind.OtherDivision => "the fraction in another division",
            SlipKind.WholeStep => "a whole step too many or too few",
            SlipKind.PointMoved => "the decimal point one place off",
            SlipKind.HalfOrDouble => "half for the whole, or the whole for half",
            _ => "in plan for point to point, or the other way round",
        };
}
