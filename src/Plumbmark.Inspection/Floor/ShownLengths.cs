using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor;

/// <summary>How computed lengths of a frame are shown: in the car's unit, no finer than the finest tool for a frame reads. Not how a reading is shown: that stays as typed.</summary>
public static class ShownLengths
{
    /// <summary>Factor from a standard uncertainty to one that holds 95 times in 100.</summary>
    /// <remarks>JCGM 100:2008, G.1.3, with k = 2.</remarks>
    public const double Coverage = 2;

    /// <summary>The display; 1/16 in or 1 mm when no tool tells its division. A caliper is for loose parts and does not count.</summary>
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
}
