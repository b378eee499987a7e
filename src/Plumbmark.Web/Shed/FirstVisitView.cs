using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Shed;

/// <summary>A job of two minutes on the demo car, step by step, as pages: what it says, which reading it doubts, and what one reading more does.</summary>
/// <param name="Step">From 1.</param>
/// <param name="Demo">The demo car in this shed; null when it was put away.</param>
/// <param name="Answer">What its readings say now.</param>
/// <param name="Doubted">The reading it doubts; null when none is doubted any more.</param>
/// <param name="IsRepeated">Whether the doubted one has been measured again and only needs taking back.</param>
/// <param name="Believed">About what the doubted tape should have shown, as a tape shows it; empty when unknown.</param>
public sealed record FirstVisitView(int Step, OpenCar? Demo, FloorAnswer? Answer, Reading? Doubted, string Believed, bool IsRepeated)
{
    /// <summary>How many steps there are.</summary>
    public const int Steps = 5;

    /// <summary>The step that a request asks for.</summary>
    public static FirstVisitView Of(PageRequest request)
    {
        var step = int.TryParse(request.Part("step"), out var asked) ? Math.Clamp(asked, 1, Steps) : 1;
        var name = DemoCar.File().Car.Name;
        var demo = request.Journals.Cars().FirstOrDefault(c => c.File.Car.Name == name);
        if (demo is null)
        {
            return new FirstVisitView(step, null, null, null, "", false);
        }

        var answer = request.Answers().For(demo);
        var suspect = answer.Suspects.FirstOrDefault(s => s.Reading is not null);
        var doubted = demo.File.Readings.FirstOrDefault(r => r.Id == suspect?.Reading);
        return new FirstVisitView(step, demo, answer, doubted, BelievedOf(demo.File, doubted, suspect), HasRepeat(demo.File, doubted));
    }

    private static bool HasRepeat(CarFile car, Reading? doubted) =>
        doubted is not null
        && car.StandingReadings.Any(r => r.Id != doubted.Id && r.GetType() == doubted.GetType() && r.Points.SequenceEqual(doubted.Points));

    private static string BelievedOf(CarFile car, Reading? doubted, Suspect? suspect) =>
        doubted is Reading.Plan plan && suspect?.SizeMetres is { } size ? ShownLengths.Of(car).Number(plan.Value.Metres - size) : "";
}
