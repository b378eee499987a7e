using System.Globalization;
using System.Net;
using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The frame before and after over each other from above: before dashed, after solid, both deviations exaggerated by one factor that is written on it.</summary>
internal sealed class OverlayPicture
{
    private const double Width = 328;
    private const double Margin = 46;
    private const double TallestFrame = 440;
    private const double WantedDeviation = 22; // picture units that the largest deviation may take
    private static readonly int[] s_factors = [1, 2, 5, 10, 20, 50, 100];

    private readonly IReadOnlyDictionary<string, PointEstimate> _before;
    private readonly IReadOnlyDictionary<string, PointEstimate> _after;
    private readonly IReadOnlyList<string> _points;
    private readonly double _scale;
    private readonly double _frontMetres;
    private readonly int _times;

    private OverlayPicture(CarFile car, FloorAnswer before, FloorAnswer after)
    {
        _before = Placed(before);
        _after = Placed(after);
        _points = [.. car.Frame.Points.Select(p => p.Id).Where(id => _before.ContainsKey(id) && _after.ContainsKey(id))];
        if (_points.Count == 0)
        {
            return;
        }

        var all = _points.SelectMany(id => new[] { _before[id], _after[id] }).ToList();
        var (front, rear) = (all.Max(p => p.XMetres!.Value), all.Min(p => p.XMetres!.Value));
        var half = Math.Max(0.1, all.Max(p => Math.Abs(p.YMetres!.Value)));
        _frontMetres = front;
        _scale = Math.Min((Width - (2 * Margin)) / (2 * half), (TallestFrame - (2 * Margin)) / Math.Max(0.3, front - rear));
        var largest = all.Max(p => Math.Max(Math.Abs(p.Deviation?.DxMetres ?? 0), Math.Abs(p.Deviation?.DyMetres ?? 0)));
        _times = largest <= 0 ? 1 : s_factors.Last(f => f == 1 || f * largest * _scale <= WantedDeviation);
    }

    /// <summary>The picture; empty when no point has a place in both.</summary>
    public static string Svg(CarFile car, FloorAnswer before, FloorAnswer after)
    {
        var picture = new OverlayPicture(car, before, after);
        return picture._points.Count == 0 ? "" : picture.Draw(car);
    }

    private static IReadOnlyDictionary<string, PointEstimate> Placed(FloorAnswer answer) =>
        answer.Points.Where(p => p is { XMetres: not null, YMetres: not null }).ToDictionary(p => p.Id, StringComparer.Ordinal);

    private string Draw(CarFile car)
    {
        var bottom = _points.Max(id => Math.Max(At(_before[id]).Y, At(_after[id]).Y)) + Margin;
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg class=\"overlay\" viewBox=\"0 0 {N(Width)} {N(bottom + 20)}\" role=\"img\" aria-label=\"{E(Say("sessions.picture", _times))}\">"
        );
        Word(svg, Width / 2, 14, "middle", Say("level.front"));
        foreach (var (style, places) in new[] { ("overlay-before", _before), ("overlay-after", _after) })
        {
            foreach (var side in new[] { ".L", ".R" })
            {
                var corners = _points
                    .Where(id => id.EndsWith(side, StringComparison.Ordinal))
                    .OrderByDescending(id => places[id].XMetres)
                    .Select(id => At(places[id]))
                    .Select(p => $"{N(p.X)},{N(p.Y)}");
                svg.Append(CultureInfo.InvariantCulture, $"<polyline class=\"{style}\" points=\"{string.Join(' ', corners)}\"/>");
            }

            foreach (
                var pair in car.Frame.Points.Where(p =>
                    p.Mirror is { } m && string.CompareOrdinal(p.Id, m) < 0 && _points.Contains(p.Id) && _points.Contains(m)
                )
            )
            {
                var (a, b) = (At(places[pair.Id]), At(places[pair.Mirror!]));
                svg.Append(CultureInfo.InvariantCulture, $"<path class=\"{style}\" d=\"M{N(a.X)} {N(a.Y)}L{N(b.X)} {N(b.Y)}\"/>");
            }
        }

        foreach (var id in _points)
        {
            var (x, y) = At(_after[id]);
            var isLeft = _after[id].YMetres >= 0;
            Word(svg, x + (isLeft ? -9 : 9), y + 5, isLeft ? "end" : "start", id);
        }

        Word(svg, Width / 2, bottom + 10, "middle", _times == 1 ? Say("sessions.true-shape") : Say("sessions.exaggerated", _times));
        return svg.Append("</svg>").ToString();
    }

    private static void Word(StringBuilder svg, double x, double y, string anchor, string words) =>
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"overlay-words\" x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">{E(words)}</text>"
        );

    private (double X, double Y) At(PointEstimate p)
    {
        var (x, y) = (
            p.XMetres!.Value + ((_times - 1) * (p.Deviation?.DxMetres ?? 0)),
            p.YMetres!.Value + ((_times - 1) * (p.Deviation?.DyMetres ?? 0))
        );
        return ((Width / 2) - (y * _scale), Margin + ((_frontMetres - x) * _scale));
    }

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private static string N(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
