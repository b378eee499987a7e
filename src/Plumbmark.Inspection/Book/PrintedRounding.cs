using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Book;

/// <summary>How far a printed figure may stand from what the drawing meant, because of how finely it is printed.</summary>
/// <remarks>
/// Half the last decimal. Whole inches and fractions are the drawing's own numbers and add up exactly; they are given half of 1/64 in, so that a
/// book that rounds to 1/64 in is not called wrong. Own convention, no published source.
/// </remarks>
public static class PrintedRounding
{
    private const double InchMetres = 0.0254;
    private const double FractionMetres = InchMetres / 128;

    /// <summary>The most that rounding can hide, metres, radians or newtons per metre.</summary>
    public static double Of(Amount printed) => printed is Amount.OfLength length ? Metres(length.Value) : Math.Abs(printed.Si) * 1e-3;

    /// <summary>The most that rounding can hide, metres.</summary>
    public static double Metres(Length printed)
    {
        var text = printed.AsTyped;
        var mark = text.LastIndexOfAny(['.', ',']);
        var decimals = mark < 0 ? 0 : text.Skip(mark + 1).TakeWhile(char.IsAsciiDigit).Count();
        return decimals == 0 && printed.Unit == LengthUnit.Inch
            ? FractionMetres
            : Math.Pow(10, -decimals) * UnitMetres(text, printed.Unit) / 2;
    }

    /// <summary>Whether two figures may be one and the same number, each rounded as it is printed.</summary>
    public static bool Agree(Amount a, Amount b) => a.Quantity == b.Quantity && Math.Abs(a.Si - b.Si) <= Of(a) + Of(b) + 1e-12;

    private static double UnitMetres(string text, LengthUnit unit) =>
        unit == LengthUnit.Inch ? (text.Contains("thou", StringComparison.OrdinalIgnoreCase) ? InchMetres / 1000 : InchMetres)
        : text.Contains("mm", StringComparison.OrdinalIgnoreCase) ? 0.001
        : text.Contains("cm", StringComparison.OrdinalIgnoreCase) ? 0.01
        : text.Contains('m', StringComparison.OrdinalIgnoreCase) ? 1
        : 0.001;
}
