using System.Text;
using static Plumbmark.Drawing.Pictures.SvgAttributes;

namespace Plumbmark.Drawing.Pictures;

/// <summary>SVG text in the making.</summary>
internal sealed class SvgSurface(SvgDress dress) : ISurface
{
    private readonly StringBuilder _svg = new();

    public void Begin(Picture picture)
    {
        var (width, height) = (Number(picture.Width), Number(picture.Height));
        _svg.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" viewBox=\"0 0 {width} {height}\"");
        if (dress == SvgDress.Attributes)
        {
            _svg.Append($" width=\"{width}\" height=\"{height}\" font-family=\"Inter, Arial, sans-serif\"");
        }

        // role "group" and not "img": the links inside must stay reachable.
        _svg.Append($" role=\"group\" aria-label=\"{Escaped(picture.Title)}\">\n<title>{Escaped(picture.Title)}</title>\n");
        _svg.Append($"<desc>{Escaped(picture.Description)}</desc>\n");
    }

    public string End() => _svg.Append("</svg>\n").ToString();

    public void Path(IReadOnlyList<Spot> spots, bool isClosed, Ink ink)
    {
        if (spots is [var from, var to] && !isClosed)
        {
            _svg.Append($"<line x1=\"{Number(from.X)}\" y1=\"{Number(from.Y)}\" x2=\"{Number(to.X)}\" y2=\"{Number(to.Y)}\"");
        }
        else
        {
            var all = string.Join(' ', spots.Select(s => $"{Number(s.X)},{Number(s.Y)}"));
            _svg.Append($"<{(isClosed ? "polygon" : "polyline")} points=\"{all}\"");
        }

        Dress("ink", ink.Name, Of(ink));
        _svg.Append("/>\n");
    }

    public void Ellipse(Spot centre, double along, double across, double turnDegrees, Ink ink)
    {
        var place = $"cx=\"{Number(centre.X)}\" cy=\"{Number(centre.Y)}\"";
        _svg.Append(
            along == across ? $"<circle {place} r=\"{Number(along)}\"" : $"<ellipse {place} rx=\"{Number(along)}\" ry=\"{Number(across)}\""
        );
        if (Number(turnDegrees) != "0")
        {
            _svg.Append($" transform=\"rotate({Number(turnDegrees)} {Number(centre.X)} {Number(centre.Y)})\"");
        }

        Dress("ink", ink.Name, Of(ink));
        _svg.Append("/>\n");
    }

    public void Words(Spot at, string text, Lettering lettering, Anchor anchor)
    {
        _svg.Append($"<text x=\"{Number(at.X)}\" y=\"{Number(at.Y)}\"");
        if (anchor != Anchor.Start)
        {
            _svg.Append($" text-anchor=\"{(anchor == Anchor.Middle ? "middle" : "end")}\"");
        }

        Dress("words", lettering.Name, Of(lettering));
        _svg.Append($">{Escaped(text)}</text>\n");
    }

    public void Group(string name, string? title, IReadOnlyList<Shape> shapes)
    {
        _svg.Append($"<g class=\"{Escaped(name)}\">");
        Inside(title, shapes);
        _svg.Append("</g>\n");
    }

    public void Link(string href, string key, string title, IReadOnlyList<Shape> shapes)
    {
        _svg.Append($"<a href=\"{Escaped(href)}\" data-key=\"{Escaped(key)}\" aria-label=\"{Escaped(title)}\">");
        Inside(title, shapes);
        _svg.Append("</a>\n");
    }

    private void Inside(string? title, IReadOnlyList<Shape> shapes)
    {
        _svg.Append(title is null ? "\n" : $"<title>{Escaped(title)}</title>\n");
        foreach (var shape in shapes)
        {
            shape.DrawOn(this);
        }
    }

    private void Dress(string prefix, string name, IEnumerable<(string Name, string Value)> attributes)
    {
        if (dress == SvgDress.Classes)
        {
            _svg.Append($" class=\"{prefix}-{name}\"");
            return;
        }

        foreach (var (attribute, value) in attributes)
        {
            _svg.Append($" {attribute}=\"{value}\"");
        }
    }

    /// <summary>Text as it may stand in XML; characters that XML 1.0 does not allow become a space.</summary>
    private static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            var isPair = char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            safe.Append(
                c switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    _ when isPair => text.AsSpan(i++, 2).ToString(),
                    _ when char.IsSurrogate(c) || (char.IsControl(c) && c is not ('\t' or '\n')) || c >= '\uFFFE' => " ",
                    _ => c.ToString(),
                }
            );
        }

        return safe.ToString();
    }
}
