namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>The paper's measures in points (1/72 in) and where text may stand.</summary>
internal sealed record PageFrame(double Width, double Height)
{
    // 10 mm: a home printer leaves about 5 mm unprinted (common practice, no source).
    public const double Beside = 28.35;
    public const double Top = 28.35;

    /// <summary>Room at the bottom, with the line at the foot in it.</summary>
    public const double Bottom = 40;

    public double TextWidth => Width - (2 * Beside);

    public double TextHeight => Height - Top - Bottom;

    public static PageFrame Of(Paper paper) =>
        paper switch
        {
            Paper.A4 => new PageFrame(595.28, 841.89),
            Paper.Letter => new PageFrame(612, 792),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
