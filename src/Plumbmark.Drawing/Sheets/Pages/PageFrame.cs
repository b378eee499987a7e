namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>The paper's measures in points (1/72 in) and where text may stand.</summary>
internal sealed record PageFrame(double Width, double Height)
{
    public const double Beside = 36;
    public const double Top = 32;
    public const double Bottom = 36;

    public double TextWidth => Width - (2 * Beside);

    public double TextHeight => Height - Top - Bottom;

    /// <summary>The same paper with room for more: laid out larger and printed smaller by this factor.</summary>
    public PageFrame Printed(double scale) => new(Width / scale, Height / scale);

    public static PageFrame Of(Paper paper) =>
        paper switch
        {
            Paper.A4 => new PageFrame(595.28, 841.89),
            Paper.Letter => new PageFrame(612, 792),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
