using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>Lengths as this car's owner reads them: in the car's unit, to the division of the tool and never finer.</summary>
internal sealed class LengthWords
{
    private readonly LengthDisplay _display;
    private readonly IReadOnlyList<Length> _limits;

    private LengthWords(LengthDisplay display, IReadOnlyList<Length> limits) => (_display, _limits) = (display, limits);

    /// <summary>The finest division among the tools that measure lengths; the usual tape's when none is told.</summary>
    public static LengthWords For(CarFile car)
    {
        var limits = new[] { car.Frame.Limits?.Mirror, car.Frame.Limits?.Height, car.Frame.Limits?.Point };
        return new LengthWords(ShownLengths.Of(car), [.. limits.OfType<Length>()]);
    }

    /// <summary>What cannot be shown.</summary>
    public double DivisionMetres => _display.Division.Metres;

    /// <summary>A length with its unit.</summary>
    public string Of(double metres) => _display.Text(metres);

    /// <summary>Its size without sign.</summary>
    public string Size(double metres) => _display.Text(Math.Abs(metres));

    /// <summary>The division that the size stays within: never nothing.</summary>
    public string Within(double metres) => _display.PlusMinus(Math.Max(Math.Abs(metres), _display.Division.Metres))[1..];

    /// <summary>An uncertainty with coverage of about 95 %, rounded up: ±3/32 in.</summary>
    public string SureTo(double uMetres) => double.IsFinite(uMetres) ? _display.PlusMinus(2 * uMetres) : Texts.Say("floor.length.nothing");

    /// <summary>The same as a clause: sure to ±3/32 in.</summary>
    public string SureToWords(double uMetres) => Texts.Say("floor.length.sure-to", SureTo(uMetres));

    /// <summary>A limit as its owner typed it; another one as a decimal with two figures.</summary>
    public string Limit(double metres)
    {
        var typed = _limits.Cast<Length?>().FirstOrDefault(l => Math.Abs(l!.Value.Metres - metres) < 1e-9);
        return (typed ?? Nearest(metres)).ToString();
    }

    private Length Nearest(double metres) =>
        _display.Unit == LengthUnit.Inch
            ? Length.FromFraction(Rational.Of((int)Math.Round(metres / 0.0254 * 64), 64), LengthUnit.Inch)
            : Length.FromMillimetres(Math.Round((decimal)(metres * 1000), 1));
}
