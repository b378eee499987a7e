using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

// Camber from a plumb line or a level, half turns taken together, corrected for the pads.
internal sealed partial class WheelCheck
{
    private void AddCamber()
    {
        foreach (var wheel in s_wheels)
        {
            var plumb = _readings.OfType<WheelReading.PlumbLine>().Where(r => r.Wheel == wheel).Select(OfPlumbLine);
            var level = _readings
                .OfType<WheelReading.Level>()
                .Where(r => r.Wheel == wheel)
                .Select(r => new HalfTurns.One(
                    r.Id,
                    r.HalfTurn,
                    r.Camber.Radians,
                    WheelCheckNumbers.Level(r),
                    WheelCheckNumbers.RimMetres
                ));
            if (HalfTurns.Of([.. plumb, .. level]) is { } camber)
            {
                var (lean, u, remark) = LeanOf(wheel);
                var kind = wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight ? FigureKind.Camber : FigureKind.RearCamber;
                Add(
                    kind,
                    wheel,
                    null,
                    null,
                    camber.Value + lean,
                    Math.Sqrt((camber.U * camber.U) + (u * u)),
                    camber.Readings,
                    [.. RunOut(camber), .. remark]
                );
            }
        }

        // A lean of the floor makes one camber larger and the other smaller: it counts twice in their difference.
        AddSplit(FigureKind.Camber, FigureKind.CamberSplit, LeanOf(WheelPlace.FrontLeft).U);
    }

    private static HalfTurns.One OfPlumbLine(WheelReading.PlumbLine r)
    {
        var value = RimReading.Camber(r.Top.Metres, r.Bottom.Metres, r.Span.Metres);
        var u = WheelCheckNumbers.Gap(r) * Math.Sqrt(2) / (r.Span.Metres * Math.Cos(value));
        return new(r.Id, r.HalfTurn, value, u, r.Span.Metres);
    }

    // A pad that stands higher leans the whole axle toward the other side: that wheel reads less camber than it has, the other more.
    private (double Lean, double U, IReadOnlyList<string> Remark) LeanOf(WheelPlace wheel)
    {
        var isFront = wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight;
        var (left, right) = isFront ? (WheelPlace.FrontLeft, WheelPlace.FrontRight) : (WheelPlace.RearLeft, WheelPlace.RearRight);
        var pads = _readings.OfType<WheelReading.Pad>().ToList();
        if (pads.LastOrDefault(p => p.Wheel == left) is not { } l || pads.LastOrDefault(p => p.Wheel == right) is not { } r)
        {
            Remark(Texts.Say("road.wheel-check--camber.the-pads-under-the-wheels"));
            return Unknown(WheelCheckNumbers.FloorLeanRadians, Texts.Say("road.wheel-check--camber.the-pads-were-not-read"));
        }

        if (TrackOf(isFront) is not { } track)
        {
            Remark(Texts.Say("road.wheel-check--camber.the-pads-were-read-but"));
            var most = Math.Abs(l.Value.Metres - r.Value.Metres) / WheelCheckNumbers.LeastTrackMetres;
            return Unknown(Math.Max(most, WheelCheckNumbers.FloorLeanRadians), Texts.Say("road.wheel-check--camber.the-track-is-not-told"));
        }

        var lean = Math.Atan2(l.Value.Metres - r.Value.Metres, track);
        var u = Math.Sqrt(Math.Pow(WheelCheckNumbers.Gap(l), 2) + Math.Pow(WheelCheckNumbers.Gap(r), 2)) / track;
        return (wheel == left ? lean : -lean, u, []);
    }

    // Not corrected, but the ± says so.
    private static (double, double, IReadOnlyList<string>) Unknown(double u, string why) =>
        (0, u, [Texts.Say("road.wheel-check--camber.of-it-is-for-the", why, RoadDisplay.Size(2 * u))]);

    private double? TrackOf(bool isFront) =>
        BookLength(isFront ? FigureKind.FrontTrack : FigureKind.RearTrack)
        ?? (isFront ? 2 * _section.Front?.WheelCentre?.Y?.Metres : (_section.Rear as RearDrawing.LiveAxle)?.Track?.Metres);

    private double? BookLength(FigureKind kind) => _section.Book.FirstOrDefault(b => b.Kind == kind)?.AimSi;
}
