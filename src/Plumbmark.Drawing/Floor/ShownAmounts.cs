using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>Computed lengths beside how sure they are, as drawings and sheets write them.</summary>
internal static class ShownAmounts
{
    /// <summary>A value without a sign, with how sure it is: <c>3/16 in ±1/16 in</c>.</summary>
    public static string AmountAndSureness(this LengthDisplay display, double metres, double uMetres) =>
        $"{display.Text(Math.Abs(metres))} {display.PlusMinus(ShownLengths.Coverage * uMetres)}";
}
