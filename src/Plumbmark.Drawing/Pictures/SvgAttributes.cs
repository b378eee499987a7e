using System.Globalization;

namespace Plumbmark.Drawing.Pictures;

/// <summary>Inks and letterings as SVG presentation attributes, which are CSS properties of the same names.</summary>
internal static class SvgAttributes
{
    public static IEnumerable<(string Name, string Value)> Of(Ink ink)
    {
        yield return ("fill", ink.Fill ?? (ink.Stroke is null ? "transparent" : "none"));
        if (ink.Stroke is null)
        {
            yield break;
        }

        yield return ("stroke", ink.Stroke);
        yield return ("stroke-width", Number(ink.Width));
        yield return ("stroke-linejoin", "round");
        if (ink.Dashes is { } dashes)
        {
            yield return ("stroke-dasharray", string.Join(' ', dashes.Select(Number)));
        }
    }

    public static IEnumerable<(string Name, string Value)> Of(Lettering lettering)
    {
        yield return ("fill", lettering.Fill);
        yield return ("font-size", Number(lettering.Size) + "px");
        yield return ("font-weight", lettering.IsBold ? "700" : "400");
    }

    /// <summary>A coordinate with at most two decimals: finer than any screen, and the same text everywhere.</summary>
    public static string Number(double units)
    {
        var rounded = Math.Round(units, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }
}
