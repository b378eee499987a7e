namespace Plumbmark.Drawing.Sheets;

/// <summary>The kinds of checks in trade words.</summary>
internal static class CheckWords
{
    public static string For(string kind) =>
        kind switch
        {
            "sideShift" => "middle off the centre line",
            "stagger" => "left ahead of right",
            "width" => "width",
            "heightDifference" => "left higher than right",
            "deviation" => "against the book",
            "pair" => "one of the pair, at least",
            _ => kind,
        };
}
