using System.Text;

namespace Plumbmark.Drawing.Pictures;

/// <summary>Writes a picture as SVG 1.1: the same picture gives the same text. What was typed by a person is escaped.</summary>
public static class SvgWriter
{
    /// <summary>The picture as one <c>svg</c> element.</summary>
    public static string Write(Picture picture, SvgDress dress = SvgDress.Classes)
    {
        var surface = new SvgSurface(dress);
        surface.Begin(picture);
        foreach (var shape in picture.Shapes)
        {
            shape.DrawOn(surface);
        }

        return surface.End();
    }

    /// <summary>The picture as a file that stands alone, UTF-8.</summary>
    public static byte[] WriteFile(Picture picture) =>
        Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Write(picture, SvgDress.Attributes));
}
