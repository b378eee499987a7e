using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>A point that the plumb line does not reach: the ways round it, surest first, and how it was brought down before.</summary>
/// <param name="Car">The car.</param>
/// <param name="Point">The point.</param>
/// <param name="Ways">The ways with what each asks and costs.</param>
/// <param name="Before">How it was brought down already, in words with the reading's name.</param>
/// <param name="Typed">The form, when it is shown again.</param>
/// <param name="Faults">What is wrong in it.</param>
public sealed record ObstructedView(
    OpenCar Car,
    FramePoint Point,
    IReadOnlyList<IndirectProposal> Ways,
    IReadOnlyList<(string Id, string Words)> Before,
    PageRequest Typed,
    FieldFaults Faults
)
{
    /// <summary>The page for the point named in the address; null when there is none.</summary>
    public static ObstructedView? Of(CarRequest request, FieldFaults? faults = null)
    {
        var car = request.Car.File;
        return car.Frame.Point(request.Part("point")) is not { } point
            ? null
            : new ObstructedView(
                request.Car,
                point,
                ObstructedPoint.For(car, point.Id),
                [
                    .. car
                        .StandingReadings.OfType<Reading.Indirect>()
                        .Where(r => r.Point == point.Id)
                        .Select(r => (r.Id, Layout.ActWords.For((Reading)r))),
                ],
                request,
                faults ?? new FieldFaults()
            );
    }

    /// <summary>The three points that the trammel is set from, as the model chose them; empty for another way.</summary>
    public IReadOnlyList<string> TrammelFrom => Ways.FirstOrDefault(w => w.Way == "trammel") is { } way ? OthersIn(way) : [];

    private IReadOnlyList<string> OthersIn(IndirectProposal way) =>
        [
            .. Car
                .File.Frame.Points.Select(p => p.Id)
                .Where(id => way.Asks.Any(a => a.StartsWith($"the length from {id} to ", StringComparison.Ordinal))),
        ];
}
