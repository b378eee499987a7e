using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The frame in space: a still picture for every browser, and the numbers for the one that turns by finger.</summary>
/// <param name="Car">The car.</param>
/// <param name="Still">The frame seen from the front left, from above, as SVG; empty when no point has a place.</param>
/// <param name="Numbers">Points and beams as JSON, in metres of the car's axes.</param>
/// <param name="Times">How many times deviations are exaggerated.</param>
/// <param name="HasHeights">Whether any height is measured; without, the frame lies flat.</param>
public sealed record TurningView(OpenCar Car, string Still, string Numbers, int Times, bool HasHeights)
{
    private const double WantedDeviationMetres = 0.06; // seen well on a frame of two metres
    private static readonly int[] s_factors = [1, 2, 5, 10, 20, 50];

    private sealed record Corner(string Id, double X, double Y, double Z, double ShouldX, double ShouldY, double ShouldZ, string Verdict);

    /// <summary>The page for a request.</summary>
    public static TurningView Of(CarRequest request)
    {
        var car = request.Car.File;
        var answer = request.Answers().For(request.Car);
        var largest = answer
            .Points.Select(p => p.Deviation)
            .OfType<Deviation>()
            .SelectMany(d => new[] { d.DxMetres, d.DyMetres, d.DzMetres })
            .Select(d => Math.Abs(d ?? 0))
            .DefaultIfEmpty(0)
            .Max();
        var times = largest <= 0 ? 1 : s_factors.Last(f => f == 1 || f * largest <= WantedDeviationMetres);
        var corners = CornersOf(car, answer, times);
        var beams = BeamsOf(car, [.. corners.Select(c => c.Id)]);
        return new TurningView(
            request.Car,
            corners.Count == 0 ? "" : StillOf(corners, beams, times),
            JsonSerializer.Serialize(
                new
                {
                    points = corners,
                    beams,
                    words = new { forward = Say("level.front") },
                },
                s_json
            ),
            times,
            answer.Points.Any(p => p.ZMetres is not null)
        );
    }

    private static readonly JsonSerializerOptions s_json = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    private static List<Corner> CornersOf(CarFile car, FloorAnswer answer, int times)
    {
        var estimates = answer.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var corners = new List<Corner>();
        foreach (var point in car.Frame.Points)
        {
            var estimate = estimates.GetValueOrDefault(point.Id);
            var sketch = point.Sketch ?? point.Nominal;
            if ((estimate?.XMetres ?? sketch?.X?.Metres) is not { } x || (estimate?.YMetres ?? sketch?.Y?.Metres) is not { } y)
            {
                continue;
            }

            var z = estimate?.ZMetres ?? sketch?.Z?.Metres ?? 0;
            var (dx, dy, dz) = (estimate?.Deviation?.DxMetres ?? 0, estimate?.Deviation?.DyMetres ?? 0, estimate?.Deviation?.DzMetres ?? 0);
            var verdict = answer.Checks.Where(c => c.Points.Count <= 2 && c.Points.Contains(point.Id)).Select(c => c.Verdict).ToList();
            var word =
                verdict.Contains(Verdict.Out) ? "out"
                : verdict.Contains(Verdict.CannotTellYet) ? "open"
                : verdict.Contains(Verdict.True) ? "true"
                : "none";
            corners.Add(
                new Corner(point.Id, x + ((times - 1) * dx), y + ((times - 1) * dy), z + ((times - 1) * dz), x - dx, y - dy, z - dz, word)
            );
        }

        return corners;
    }

    /// <summary>Along each side from the front to the rear, and across each pair.</summary>
    private static IReadOnlyList<string[]> BeamsOf(CarFile car, HashSet<string> placed)
    {
        var beams = new List<string[]>();
        foreach (var side in new[] { ".L", ".R" })
        {
            var ids = car
                .Frame.Points.Where(p => p.Mirror is not null && p.Id.EndsWith(side, StringComparison.Ordinal) && placed.Contains(p.Id))
                .OrderByDescending(p => (p.Sketch?.X ?? p.Nominal?.X)?.Metres ?? 0)
                .Select(p => p.Id)
                .ToList();
            beams.AddRange(ids.Zip(ids.Skip(1)).Select(b => new[] { b.First, b.Second }));
        }

        beams.AddRange(
            car.Frame.Points.Where(p =>
                    p.Mirror is { } m && string.CompareOrdinal(p.Id, m) < 0 && placed.Contains(p.Id) && placed.Contains(m)
                )
                .Select(p => new[] { p.Id, p.Mirror! })
        );
        return beams;
    }

    /// <summary>A parallel view from the front left and above: no perspective, so that equal lengths stay equal.</summary>
    private static string StillOf(IReadOnlyList<Corner> corners, IReadOnlyList<string[]> beams, int times)
    {
        var (cos, sin) = (Math.Cos(Math.PI / 6), Math.Sin(Math.PI / 6));
        (double X, double Y) Seen(double x, double y, double z) => ((-x * cos) - (y * cos), (-x * sin * 0.7) + (y * sin * 0.7) - (z * 0.9));
        var all = corners.SelectMany(c => new[] { Seen(c.X, c.Y, c.Z), Seen(c.ShouldX, c.ShouldY, c.ShouldZ) }).ToList();
        var (left, right, top, bottom) = (all.Min(p => p.X), all.Max(p => p.X), all.Min(p => p.Y), all.Max(p => p.Y));
        const double Width = 328;
        const double Margin = 34;
        var scale = (Width - (2 * Margin)) / Math.Max(0.1, right - left);
        (double X, double Y) At((double X, double Y) p) => (Margin + ((p.X - left) * scale), Margin + ((p.Y - top) * scale));
        var height = ((bottom - top) * scale) + (2 * Margin);
        var byId = corners.ToDictionary(c => c.Id, StringComparer.Ordinal);
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg class=\"overlay\" viewBox=\"0 0 {N(Width)} {N(height)}\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(Say("turning.picture", times))}\">"
        );
        foreach (var beam in beams)
        {
            var (a, b) = (byId[beam[0]], byId[beam[1]]);
            Line(svg, "overlay-before", At(Seen(a.ShouldX, a.ShouldY, a.ShouldZ)), At(Seen(b.ShouldX, b.ShouldY, b.ShouldZ)));
            Line(svg, "overlay-after", At(Seen(a.X, a.Y, a.Z)), At(Seen(b.X, b.Y, b.Z)));
        }

        foreach (var corner in corners)
        {
            var (x, y) = At(Seen(corner.X, corner.Y, corner.Z));
            svg.Append(
                corner.Verdict == "out"
                    ? $"<rect class=\"overlay-dot\" x=\"{N(x - 5)}\" y=\"{N(y - 5)}\" width=\"10\" height=\"10\"/>"
                    : $"<circle class=\"overlay-dot\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"4\"/>"
            );
            // The left side is the nearer one and lower in the picture: its names go below, the others above.
            var isNear = corner.Y > 0;
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<text class=\"overlay-words\" x=\"{N(x - (isNear ? 8 : -8))}\" y=\"{N(y + (isNear ? 18 : -8))}\" text-anchor=\"middle\">{WebUtility.HtmlEncode(corner.Id)}</text>"
            );
        }

        return svg.Append("</svg>").ToString();
    }

    private static void Line(StringBuilder svg, string style, (double X, double Y) a, (double X, double Y) b) =>
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"{style}\" d=\"M{N(a.X)} {N(a.Y)}L{N(b.X)} {N(b.Y)}\"/>");

    private static string N(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
