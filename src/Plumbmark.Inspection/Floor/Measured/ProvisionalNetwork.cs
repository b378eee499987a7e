using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>The readings that stand as observations of a network, with usual accuracies.</summary>
internal static class ProvisionalNetwork
{
    public static Network Of(CarFile car)
    {
        var points = car.Frame.Points.Select(p => new NetworkPoint(p.Id)
        {
            X = p.IsFixed && p.Sketch?.X is { } x ? new Coordinate.Fixed(x.Metres) : Coordinate.Unknown,
            Y = p.IsFixed && p.Sketch?.Y is { } y ? new Coordinate.Fixed(y.Metres) : Coordinate.Unknown,
            Z = p.IsFixed && p.Sketch?.Z is { } z ? new Coordinate.Fixed(z.Metres) : Coordinate.Unknown,
            SketchXMetres = (p.Sketch ?? p.Nominal)?.X?.Metres,
            SketchYMetres = (p.Sketch ?? p.Nominal)?.Y?.Metres,
            SketchZMetres = (p.Sketch ?? p.Nominal)?.Z?.Metres,
            DropSigmaMetres = p.DropSigma?.Metres ?? 0.5e-3,
        });
        var pairs = FramePairs.Of(car.Frame.Points).Select(p => new MirrorPair(car.Frame.Points[p.Left].Id, car.Frame.Points[p.Right].Id));
        return new Network(points, car.StandingReadings.Select(r => Observed(car, r)), [], pairs);
    }

    public static Observation Observed(CarFile car, Reading reading)
    {
        var tool = car.Tools.FirstOrDefault(t => t.Id == reading.Tool);
        var division = tool?.Division?.Metres ?? 1e-3;
        var sigma = reading.Sigma?.Metres ?? tool?.Sigma?.Metres ?? Math.Sqrt((division * division / 12) + (0.5e-3 * 0.5e-3));
        var ends = reading.Sigma is null && tool?.Sigma is null ? Math.Sqrt((sigma * sigma) + (0.5e-3 * 0.5e-3)) : sigma;
        var start = reading.StartAt?.Metres ?? 0;
        return reading switch
        {
            Reading.Plan r => new Observation.PlanDistance(r.Id, r.From, r.To, r.Value.Metres - start, ends),
            Reading.Direct r => new Observation.DirectDistance(r.Id, r.From, r.To, r.Value.Metres - start, ends),
            Reading.Height r => new Observation.Height(r.Id, r.Point, r.Value.Metres, sigma),
            Reading.Rise r => new Observation.Rise(r.Id, r.From, r.To, r.Value.Metres, sigma),
            Reading.Offset r => new Observation.Offset(r.Id, r.Point, r.From, r.To, r.Value.Metres, ends),
            Reading.Drop { Distance: { } d } r => new Observation.DropDistance(r.Id, r.Point, d.Metres),
            Reading.Drop r => new Observation.DropShift(r.Id, r.Point, r.Dx!.Value.Metres, r.Dy!.Value.Metres),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
