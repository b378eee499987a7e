using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Drawing.Floor;

/// <summary>How computed lengths of a car are written on drawings and sheets: in its unit, no finer than its finest tool for a frame reads; a caliper is for loose parts.</summary>
public static class ShownLengths
{
    /// <summary>The display; 1/16 in or 1 mm when no tool tells its division.</summary>
    public static LengthDisplay Of(CarFile car)
    {
        var divisions = car
            .Tools.Where(t => t.Kind != ToolKind.Caliper)
            .Select(t => t.Division)
            .OfType<Length>()
            .Where(d => d > Length.Zero)
            .ToList();
        var finest =
            divisions.Count > 0 ? divisions.Min()
            : car.Units == LengthUnit.Inch ? Length.FromFraction(0, 1, 16, LengthUnit.Inch)
            : Length.FromMillimetres(1);
        return LengthDisplay.For(car.Units, finest);
    }

    /// <summary>Factor from a standard uncertainty to one that holds 95 times in 100 (JCGM 100:2008, G.1.3 with k = 2).</summary>
    public const double Coverage = 2;

    /// <summary>A value without a sign, with how sure it is: <c>3/16 in ±1/16 in</c>.</summary>
    public static string AmountAndSureness(this LengthDisplay display, double metres, double uMetres) =>
        $"{display.Text(Math.Abs(metres))} {display.PlusMinus(Coverage * uMetres)}";
}
