using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Shed;

/// <summary>What the shed shows.</summary>
/// <param name="Cars">The cars that stand in it.</param>
/// <param name="Bin">The cars in the bin.</param>
/// <param name="Typed">What was typed into the form for a new car, when it is shown again.</param>
/// <param name="Faults">What was wrong in it.</param>
/// <param name="Refused">A car file that was refused; null when none was.</param>
public sealed record ShedView(
    IReadOnlyList<ShedView.Line> Cars,
    IReadOnlyList<ShedView.Line> Bin,
    PageRequest Typed,
    FieldFaults Faults,
    ShedView.RefusedFile? Refused
)
{
    /// <summary>A car in the list.</summary>
    public sealed record Line(long Id, string Name, string? Serial, string State, Verdict? Verdict);

    /// <summary>A file that is not a car, with everything that is wrong with it.</summary>
    public sealed record RefusedFile(string Name, IReadOnlyList<Fault> Faults);

    /// <summary>The shed for a request, with what was wrong in a form when something was.</summary>
    public static ShedView Of(PageRequest request, FieldFaults? faults = null, RefusedFile? refused = null)
    {
        var answers = request.Answers();
        return new ShedView(
            [.. request.Journals.Cars().Select(c => LineOf(c, answers))],
            [.. request.Journals.Bin().Select(c => LineOf(c, answers))],
            request,
            faults ?? new FieldFaults(),
            refused
        );
    }

    private static Line LineOf(OpenCar car, FloorAnswers answers)
    {
        var readings = car.File.StandingReadings.Count();
        var points = car.File.Frame.Points.Count;
        var state = (readings, points) switch
        {
            (0, 0) => "nothing drawn yet",
            (0, _) => $"{Words.Count(points, "point")}, no reading yet",
            _ => $"{Words.Count(points, "point")}, {Words.Count(readings, "reading")}",
        };
        return new Line(car.Id, Words.NameOf(car), car.File.Car.Serial, state, readings == 0 ? null : answers.For(car).Overall.Verdict);
    }
}
