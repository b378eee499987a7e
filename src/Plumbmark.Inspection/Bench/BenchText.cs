using System.Globalization;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>Dimensions as a person reads them: in the car's unit, and never finer than they were measured.</summary>
/// <param name="units">The car's unit.</param>
public sealed class BenchText(LengthUnit units)
{
    private const double NewtonsPerMetreOfPoundPerInch = Load.PoundForceNewtons / 0.0254;

    /// <summary>A value with its unit, rounded to what its uncertainty allows.</summary>
    public string Value(Quantity quantity, double si, double u) =>
        quantity switch
        {
            Quantity.Length => LengthFor(u).Text(si),
            Quantity.Angle => Degrees(si, u),
            _ => Rate(si, u),
        };

    /// <summary>A deviation with its sign: + for larger; in metres, radians or newtons per metre.</summary>
    public string Signed(Quantity quantity, double si, double u)
    {
        var text = Value(quantity, Math.Abs(si), u);
        var isNothing = text.Where(char.IsDigit).All(c => c == '0');
        return isNothing ? text : (si < 0 ? "−" : "+") + text;
    }

    /// <summary>Twice the standard uncertainty, as ± something; in metres, radians or newtons per metre.</summary>
    public string PlusMinus(Quantity quantity, double u) =>
        quantity switch
        {
            Quantity.Length => LengthFor(u).PlusMinus(2 * u),
            Quantity.Angle => "±" + Degrees(RoundedUp(2 * u * 180 / Math.PI, AngleDecimals(u)) * Math.PI / 180, u),
            _ => "±" + Value(quantity, 2 * u, u),
        };

    private LengthDisplay LengthFor(double u) =>
        new(
            units == LengthUnit.Inch
                ? u switch
                {
                    < 0.1e-3 => Length.FromInches(0.001m),
                    // Between two parts measured with a rule this still reads as hundredths beside the book's hundredths.
                    < 1.5e-3 => Length.FromInches(0.01m),
                    _ => Length.FromFraction(0, 1, 32, LengthUnit.Inch),
                }
                : u switch
                {
                    < 0.05e-3 => Length.FromMillimetres(0.01m),
                    < 0.6e-3 => Length.FromMillimetres(0.1m),
                    _ => Length.FromMillimetres(0.5m),
                }
        );

    private static int AngleDecimals(double u) => u < 0.1 * Math.PI / 180 ? 2 : 1;

    // An uncertainty is never shown as none.
    private static double RoundedUp(double number, int decimals) =>
        Math.Ceiling((number * Math.Pow(10, decimals)) - 1e-9) / Math.Pow(10, decimals);

    private static string Degrees(double radians, double u)
    {
        return (radians * 180 / Math.PI).ToString($"F{AngleDecimals(u)}", CultureInfo.InvariantCulture).Replace('-', '−') + "°";
    }

    private string Rate(double newtonsPerMetre, double u)
    {
        var (number, step, unit) =
            units == LengthUnit.Inch
                ? (newtonsPerMetre / NewtonsPerMetreOfPoundPerInch, u / NewtonsPerMetreOfPoundPerInch, "lbf/in")
                : (newtonsPerMetre / 1000, u / 1000, "N/mm");
        return number.ToString(step < 0.5 ? "F1" : "F0", CultureInfo.InvariantCulture).Replace('-', '−') + " " + unit;
    }
}
