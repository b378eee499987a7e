using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Road;

/// <summary>What will the wheels do? The one way from a car to a <see cref="RoadAnswer"/>.</summary>
public static class RoadInspection
{
    /// <summary>The seed of the trials, so that the same car gives the same digits.</summary>
    private const ulong Seed = 20;

    private const int UnmeasuredKept = 6;

    /// <summary>What the frame, the parts and the readings at the wheels say. Never fails on a readable car: too little is an answer.</summary>
    /// <param name="car">The car.</param>
    /// <param name="trials">How many cars to try at random to check the uncertainties; 0 to leave that out.</param>
    /// <param name="withTurns">Whether those trials try the outer wheel's turns too, which takes ten times as long.</param>
    public static RoadAnswer Of(CarFile car, int trials = 0, bool withTurns = false) => Of(car, PlacesOfFloor.Of(car), trials, withTurns);

    /// <summary>The same with what was measured of the frame told.</summary>
    /// <param name="car">The car.</param>
    /// <param name="measured">What the Floor found of the frame's points.</param>
    /// <param name="trials">How many cars to try; 0 for none.</param>
    /// <param name="withTurns">Whether those trials try the outer wheel's turns too.</param>
    public static RoadAnswer Of(CarFile car, MeasuredPlaces measured, int trials = 0, bool withTurns = false)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(measured);
        var display = RoadDisplay.Of(car);
        var model = RoadModel.Of(car, measured);
        FrontFit.Remark(model, display);
        RearFit.Remark(model);
        var (wheelsAlone, wheelRemarks) = WheelCheck.Of(model.Section, display);
        var (figures, wheels) = JudgedTogether.Of(RoadFigures.Of(model), wheelsAlone);
        foreach (var figure in figures.Where(f => f.IsDrawingBeyondBook))
        {
            model.Remarks.Miss(RoadSentences.DrawnBeyond(figure, display));
        }

        var travel = FrontTravel.Of(model, display);
        Side[] sides = [Side.Left, Side.Right];
        var drawnCurves = sides.ToDictionary(s => s, s => travel?.Curve(s, isDrawn: true) ?? []);
        var foundCurves = sides.ToDictionary(s => s, s => travel?.Curve(s, isDrawn: false) ?? []);
        var settings = AdjusterAdvice.Of(model, figures, display);
        var unmeasured = Unmeasured(model, figures);
        var verdict = VerdictOf(figures, wheels, model.Remarks);
        var (headline, why) = RoadSentences.Of(verdict, figures, wheels, settings, model, display);
        return new()
        {
            Verdict = verdict,
            Headline = headline,
            Why = why,
            Figures = figures,
            Settings = settings,
            Ground = [.. sides.Select(s => travel?.Ground(s)).OfType<GroundAnswer>()],
            DrawnCurves = drawnCurves,
            FoundCurves = foundCurves,
            Turns = travel?.Turns() ?? [],
            Sketches = [.. sides.Select(s => travel?.Sketch(s)).OfType<CornerSketch>()],
            RearSketch = RearSketchOf(model),
            Wheels = wheels,
            WheelRemarks = wheelRemarks,
            Trials = trials > 1 ? RoadTrial.Of(model, figures, trials, withTurns, Seed) : [],
            Unmeasured = unmeasured,
            Missing = model.Remarks.Missing,
            Assumed = model.Remarks.Assumed,
        };
    }

    // Out when a figure is out; true only when every figure that is asked for is true and nothing is missing.
    private static Verdict VerdictOf(IReadOnlyList<RoadFigure> figures, IReadOnlyList<WheelResult> wheels, RoadRemarks remarks)
    {
        List<Verdict> verdicts = [.. figures.Select(f => f.Verdict).Concat(wheels.Select(w => w.Verdict)).OfType<Verdict>()];
        return verdicts.Contains(Verdict.Out) ? Verdict.Out
            : verdicts.Count > 0 && verdicts.All(v => v == Verdict.True) && remarks.Missing.Count == 0 ? Verdict.True
            : Verdict.CannotTellYet;
    }

    private static RearSketch? RearSketchOf(RoadModel model)
    {
        if (model.Kinematics.Rear is not { } rear)
        {
            return null;
        }

        var (drawn, found) = (rear.Stand(new double[RoadParameters.Count]), rear.Stand(model.Deviations.Amounts));
        return drawn.Reach.IsReached && found.Reach.IsReached ? new(drawn.Left, drawn.Right, found.Left, found.Right) : null;
    }

    // What nobody has measured, by how much of a figure's limit its allowance takes: the measurement worth most comes first.
    private static List<UnmeasuredShare> Unmeasured(RoadModel model, IReadOnlyList<RoadFigure> figures)
    {
        var amounts = model.Deviations.Amounts;
        var (basics, slopes) = (model.Kinematics.Basics(amounts), model.Kinematics.Slopes(amounts));
        var limited = figures.Where(f => f.ProbabilityWithin is not null && f.UUnmeasured > 0).ToList();
        var shares =
            from figure in limited
            let slope = FigureFormula.All.First(f => f.Kind == figure.Kind && f.Side == figure.Side).Slope(basics, slopes)
            let half = HalfLimit(figure.Book!)
            from g in RoadGroup.All
            let u = Math.Sqrt(g.Parameters.Sum(i => slope[i] * slope[i] * model.Deviations.Allowed[i] * model.Deviations.Allowed[i]))
            where u > 0
            orderby u / half descending
            select new UnmeasuredShare(g.What, g.Side, figure.Kind, u);
        return [.. shares.DistinctBy(s => (s.What, s.Side)).Take(UnmeasuredKept)];
    }

    private static double HalfLimit(AskedFigure book)
    {
        var usual = RoadFigures.UnitOf(book.Kind) == FigureUnit.Angle ? 0.5 * Math.PI / 180 : 3e-3;
        return book is { LeastSi: { } least, MostSi: { } most } && most > least ? 0.5 * (most - least) : usual;
    }
}
