using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor;

/// <summary>Lengths as this car's owner reads them: in the car's unit, to the division of the tool and never finer.</summary>
internal sealed class LengthWords
{
    private readonly LengthDisplay _display;

    private LengthWords(LengthDisplay display) => _display = display;

    /// <summary>The finest division among the tools that measure lengths; the usual tape's when none is told.</summary>
    public static LengthWords For(CarFile car)
    {
        var usual = car.Units == LengthUnit.Inch ? Length.FromFraction(Rational.Of(1, 16), LengthUnit.Inch) : Length.FromMillimetres(1);
        var told = car.Tools.Where(t => t.Kind != ToolKind.Caliper && t.Division is not null).Select(t => t.Division!.Value).ToList();
        return new LengthWords(LengthDisplay.For(car.Units, told.Count > 0 ? told.Min() : usual));
    }

    /// <summary>A length with its unit.</summary>
    public string Of(double metres) => _display.Text(metres);

    /// <summary>Its size without sign.</summary>
    public string Size(double metres) => _display.Text(Math.Abs(metres));

    /// <summary>An uncertainty with coverage of about 95 %, rounded up: ±3/32 in.</summary>
    public string SureTo(double uMetres) => double.IsFinite(uMetres) ? _display.PlusMinus(2 * uMetres) : "nothing";

    /// <summary>A limit, as it was typed where possible.</summary>
    public string Limit(double metres) => _display.PlusMinus(metres)[1..];
}
