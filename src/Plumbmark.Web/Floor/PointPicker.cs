using System.Globalization;
using System.Net;
using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>
/// The drawing to pick points on: front at the top, the car's left on the left, one row for each station, so that every point is big
/// enough for a thumb. A scheme, not to scale; each point is a link, so it works without script.
/// </summary>
internal sealed class PointPicker
{
    // In picture units, which are pixels on a phone 360 wide.
    private const int Width = 328;
    private const int RowHeight = 52;
    private const int Middle = Width / 2;
    private const int NarrowestHalf = 48;
    private const int WidestHalf = 104;
    private const int Touch = 24;

    private readonly CarFile _car;
    private readonly long _id;
    private readonly EntryForm _form;
    private readonly List<Row> _rows;
    private readonly Dictionary<string, (double X, double Y)> _places = new(StringComparer.Ordinal);

    private PointPicker(CarFile car, long id, EntryForm form)
    {
        _car = car;
        _id = id;
        _form = form;
        _rows = Rows(car.Frame);
        var widest = _rows.Select(r => r.HalfMetres).DefaultIfEmpty(0).Max();
        for (var i = 0; i < _rows.Count; i++)
        {
            var y = RowHeight / 2 + RowHeight * i;
            var half = widest > 0 ? NarrowestHalf + (WidestHalf - NarrowestHalf) * _rows[i].HalfMetres / widest : WidestHalf;
            Put(_rows[i].Left, Middle - half, y);
            Put(_rows[i].Right, Middle + half, y);
            Put(_rows[i].Centre, Middle, y);
        }
    }

    private sealed record Row(FramePoint? Left, FramePoint? Right, FramePoint? Centre, double XMetres, double HalfMetres);

    /// <summary>The drawing as SVG; empty when there is no point.</summary>
    public static string Svg(CarFile car, long id, EntryForm form, FloorAnswer answer) =>
        car.Frame.Points.Count == 0 ? "" : new PointPicker(car, id, form).Draw(answer);

    private void Put(FramePoint? point, double x, double y)
    {
        if (point is not null)
        {
            _places[point.Id] = (x, y);
        }
    }

    private string Draw(FloorAnswer answer)
    {
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg class=\"picker\" viewBox=\"0 0 {Width} {RowHeight * _rows.Count}\" role=\"group\" aria-label=\"{WebUtility.HtmlEncode(Say("picker.points-of-the-frame"))}\">"
        );
        foreach (var side in new[] { _rows.Select(r => r.Left), _rows.Select(r => r.Right) })
        {
            var corners = side.OfType<FramePoint>().Select(p => _places[p.Id]).Select(p => $"{N(p.X)},{N(p.Y)}");
            svg.Append(CultureInfo.InvariantCulture, $"<polyline class=\"picker-rail\" points=\"{string.Join(' ', corners)}\"/>");
        }

        foreach (var reading in _car.StandingReadings)
        {
            Line(svg, "picker-taken", reading);
        }

        if (answer.Next is [{ From: { } from, To: { } to }, ..])
        {
            Line(svg, "picker-next", from, to);
        }

        if (_form.From.Length > 0 && _form.To.Length > 0)
        {
            Line(svg, "picker-now", _form.From, _form.To);
        }

        foreach (var point in _rows.SelectMany(r => new[] { r.Left, r.Centre, r.Right }).OfType<FramePoint>())
        {
            Point(svg, point);
        }

        End(svg, _form.From, 1);
        End(svg, _form.To, 2);
        return svg.Append("</svg>").ToString();
    }

    private void Line(StringBuilder svg, string style, Reading reading)
    {
        switch (reading)
        {
            case Reading.Plan r:
                Line(svg, style, r.From, r.To);
                break;
            case Reading.Direct r:
                Line(svg, style, r.From, r.To);
                break;
        }
    }

    private void Line(StringBuilder svg, string style, string from, string to)
    {
        if (_places.TryGetValue(from, out var a) && _places.TryGetValue(to, out var b))
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"{style}\" d=\"M{N(a.X)} {N(a.Y)}L{N(b.X)} {N(b.Y)}\"/>");
        }
    }

    private void Point(StringBuilder svg, FramePoint point)
    {
        var (x, y) = _places[point.Id];
        var picked = point.Id == _form.From || point.Id == _form.To || point.Id == _form.Point;
        var name = WebUtility.HtmlEncode(point.Id);
        var words = point.Label is null ? name : $"{name}, {WebUtility.HtmlEncode(point.Label)}";
        var (labelX, anchor) = x < Middle ? (x - 16, "end") : (x + 16, "start");
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<a href=\"{WebUtility.HtmlEncode(Target(point.Id))}\" class=\"picker-point{(picked ? " is-picked" : "")}\" data-quiet=\"\" data-point=\"{name}\" aria-label=\"{words}{WebUtility.HtmlEncode(Role(point.Id))}\">"
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<rect class=\"picker-touch\" x=\"{N(x < Middle ? 0 : x - Touch)}\" y=\"{N(y - Touch - 2)}\" width=\"{N(x < Middle ? x + Touch : x > Middle ? Width - x + Touch : 2 * Touch)}\" height=\"{2 * Touch + 4}\" rx=\"10\"/>"
        );
        svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"picker-dot\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{(picked ? 11 : 8)}\"/>");
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"picker-name\" x=\"{N(labelX)}\" y=\"{N(y + 6)}\" text-anchor=\"{anchor}\">{name}</text>"
        );
        svg.Append("</a>");
    }

    /// <summary>The number of an end, outside the link, whose name already says it.</summary>
    private void End(StringBuilder svg, string id, int number)
    {
        if (_places.TryGetValue(id, out var at))
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<text class=\"picker-end\" aria-hidden=\"true\" x=\"{N(at.X)}\" y=\"{N(at.Y + 5)}\" text-anchor=\"middle\">{number}</text>"
            );
        }
    }

    private string Role(string id) =>
        id == _form.From ? Say("picker.picked-as-start")
        : id == _form.To ? Say("picker.picked-as-end")
        : id == _form.Point ? Say("picker.picked")
        : "";

    /// <summary>When the last end is picked the value comes next, otherwise the drawing again.</summary>
    private string Target(string id)
    {
        var next = _form.Tapped(id);
        return $"{next.Address(_id)}#{(next.IsPicked ? "value" : "entry")}";
    }

    /// <summary>Pairs in one row, front first by the sketch; what has no sketch comes last in its own order.</summary>
    private static List<Row> Rows(Frame frame)
    {
        var rows = new List<Row>();
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var point in frame.Points.Where(p => !done.Contains(p.Id)))
        {
            var partner = point.Mirror is { } mirror ? frame.Point(mirror) : null;
            done.Add(point.Id);
            if (partner is not null)
            {
                done.Add(partner.Id);
            }

            rows.Add(RowOf(point, partner));
        }

        return [.. rows.Select((row, i) => (row, i)).OrderByDescending(r => r.row.XMetres).ThenBy(r => r.i).Select(r => r.row)];
    }

    private static Row RowOf(FramePoint point, FramePoint? partner)
    {
        var x = point.Sketch?.X ?? point.Nominal?.X ?? partner?.Sketch?.X;
        var y = point.Sketch?.Y ?? point.Nominal?.Y;
        var xMetres = x?.Metres ?? double.NegativeInfinity;
        if (partner is null)
        {
            return IsRight(point, y) ? new Row(null, point, null, xMetres, 0)
                : IsLeft(point, y) ? new Row(point, null, null, xMetres, 0)
                : new Row(null, null, point, xMetres, 0);
        }

        var half = Math.Abs(y?.Metres ?? 0);
        return IsRight(point, y) ? new Row(partner, point, null, xMetres, half) : new Row(point, partner, null, xMetres, half);
    }

    private static bool IsRight(FramePoint point, Engine.Lengths.Length? y) =>
        point.Id.EndsWith(".R", StringComparison.Ordinal) || (!IsLeft(point, null) && y is { } v && v < Engine.Lengths.Length.Zero);

    private static bool IsLeft(FramePoint point, Engine.Lengths.Length? y) =>
        point.Id.EndsWith(".L", StringComparison.Ordinal) || (y is { } v && v > Engine.Lengths.Length.Zero);

    private static string N(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
