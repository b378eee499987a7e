using Microsoft.Extensions.Logging;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>What the Road says of a car, worked out once for each state of its journal.</summary>
/// <param name="workOut">From a car to its answer.</param>
/// <param name="log">Is told of what cannot be worked out.</param>
public sealed class RoadAnswers(Func<CarFile, RoadAnswer> workOut, ILogger<RoadAnswers> log)
{
    private readonly KeptAnswers<CarState, RoadAnswer> _answers = new("the wheels", log);

    /// <summary>The answer for a car as it stands; where none could be worked out, one that says so and nothing else, so that readings can still be entered.</summary>
    public RoadAnswer For(OpenCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        try
        {
            return _answers.For(CarState.Of(car), () => workOut(car.File));
        }
        catch (NoAnswerException)
        {
            return Failed();
        }
    }

    private static RoadAnswer Failed()
    {
        var noCurve = new[] { Side.Left, Side.Right }.ToDictionary(s => s, IReadOnlyList<CurvePoint> (_) => []);
        return new()
        {
            Verdict = Verdict.CannotTellYet,
            Headline = NoAnswerWords.Headline,
            Why = NoAnswerWords.Why,
            Figures = [],
            Settings = [],
            Ground = [],
            DrawnCurves = noCurve,
            FoundCurves = noCurve,
            Turns = [],
            Sketches = [],
            RearSketch = null,
            Wheels = [],
            WheelRemarks = [],
            Trials = [],
            Unmeasured = [],
            Missing = [],
            Assumed = [],
        };
    }
}
