using System.Globalization;
using System.Text;
using QRCoder;

namespace Plumbmark.Web.Phones;

/// <summary>An address as a picture for a phone's camera (ISO/IEC 18004), for a page and for a terminal.</summary>
public static class QrPicture
{
    private const int QuietModules = 4; // ISO/IEC 18004, 6.3.8: blank on every side

    /// <summary>As SVG, black on white in the dark too: that is what cameras look for.</summary>
    public static string Svg(string text)
    {
        var rows = Rows(text);
        var path = new StringBuilder();
        for (var y = 0; y < rows.Length; y++)
        {
            for (var x = 0; x < rows.Length; x++)
            {
                if (rows[y][x])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return $"<svg viewBox=\"0 0 {rows.Length} {rows.Length}\" role=\"img\" aria-label=\"The address as a picture for a phone's camera\" shape-rendering=\"crispEdges\">"
            + $"<rect width=\"{rows.Length}\" height=\"{rows.Length}\" fill=\"#ffffff\"/><path fill=\"#000000\" d=\"{path}\"/></svg>";
    }

    /// <summary>As lines for a terminal, two rows of the picture in one line of text.</summary>
    /// <param name="text">The address.</param>
    /// <param name="isColoured">Whether the terminal understands colours: then it is black on white whatever its own are.</param>
    public static string Text(string text, bool isColoured)
    {
        var rows = Rows(text);
        var lines = new StringBuilder();
        for (var y = 0; y < rows.Length; y += 2)
        {
            lines.Append(isColoured ? "\u001b[30;107m" : "");
            for (var x = 0; x < rows.Length; x++)
            {
                var (above, below) = (rows[y][x], y + 1 < rows.Length && rows[y + 1][x]);
                // Without colours a light square is what is drawn: most terminals are dark.
                lines.Append(isColoured ? Square(above, below) : Square(!above, !below));
            }

            lines.Append(isColoured ? "\u001b[0m" : "").Append('\n');
        }

        return lines.ToString();
    }

    private static char Square(bool above, bool below) =>
        (above, below) switch
        {
            (true, true) => '█',
            (true, false) => '▀',
            (false, true) => '▄',
            _ => ' ',
        };

    private static bool[][] Rows(string text)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        // The library adds the quiet zone itself.
        var rows = data.ModuleMatrix.Select(row => row.Cast<bool>().ToArray()).ToArray();
        System.Diagnostics.Debug.Assert(rows[QuietModules - 1].All(dark => !dark) && rows[QuietModules].Any(dark => dark));
        return rows;
    }
}
