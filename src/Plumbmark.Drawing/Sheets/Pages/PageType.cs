using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>The lettering of sheets, in points.</summary>
internal static class PageType
{
    private const string Dark = "#13262d";
    private const string Grey = "#46575e";
    private const string Rust = "#9c2f00";
    private const string Blue = "#0a4a94";
    private const string Brown = "#57420a";

    public static Lettering Title { get; } = new("title", 15, Dark, IsBold: true);

    public static Lettering Heading { get; } = new("heading", 10, Dark, IsBold: true);

    public static Lettering Body { get; } = new("body", 8.5, Dark);

    public static Lettering Strong { get; } = new("strong", 8.5, Dark, IsBold: true);

    public static Lettering Small { get; } = new("small", 7.5, Grey);

    public static Lettering Fine { get; } = new("fine", 7.5, Dark);

    public static Lettering SmallStrong { get; } = new("small-strong", 7.5, Dark, IsBold: true);

    /// <summary>Close lettering, for a sheet that is to stay on one page.</summary>
    public static Lettering Dense { get; } = new("dense", 7, Dark);

    public static Lettering DenseStrong { get; } = new("dense-strong", 7, Dark, IsBold: true);

    public static Lettering DenseGrey { get; } = new("dense-grey", 6.7, Grey);

    public static Lettering DenseHeading { get; } = new("dense-heading", 8.5, Dark, IsBold: true);

    public static Lettering Cell { get; } = new("cell", 8, Dark);

    public static Lettering CellSmall { get; } = new("cell-small", 7.5, Dark);

    public static Lettering OutSmall { get; } = new("out-small", 7.5, Rust, IsBold: true);

    public static Lettering CellStrong { get; } = new("cell-strong", 8, Dark, IsBold: true);

    public static Lettering Out { get; } = new("out", 8, Rust, IsBold: true);

    public static Lettering True { get; } = new("true", 8, Blue, IsBold: true);

    public static Lettering CannotTell { get; } = new("cannot-tell", 8, Brown, IsBold: true);

    public static Lettering FractionBar { get; } = new("fraction-bar", 12, "#8a989e");

    public static Lettering Verdict { get; } = new("verdict", 20, Dark, IsBold: true);

    /// <summary>The same lettering, close.</summary>
    public static Lettering Close(this Lettering lettering) => lettering with { Size = Dense.Size };

    /// <summary>From one baseline to the next; small letters stand closer.</summary>
    public static double Leading(this Lettering lettering) => Math.Round(lettering.Size * (lettering.Size < 8 ? 1.24 : 1.32), 1);
}
