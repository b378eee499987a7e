using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Road;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>What the Road shows of a car: the answer, its drawings, and what was read at the wheels.</summary>
/// <param name="Car">The car.</param>
/// <param name="Answer">What the Road says.</param>
/// <param name="Display">How its numbers are shown.</param>
/// <param name="Pictures">The drawings, each with its title, as SVG; the first is open.</param>
public sealed record RoadView(OpenCar Car, RoadAnswer Answer, RoadDisplay Display, IReadOnlyList<(string Title, string Svg)> Pictures)
{
    /// <summary>Trials of the page that checks the uncertainties: enough for one digit, and soon done.</summary>
    private const int PageTrials = 20_000;

    /// <summary>Whether anything of the suspension is told.</summary>
    public bool HasAnything => Car.File.Road is not null;

    // What is out or open comes first, the worst on top; a phone shows no more than this without being asked.
    private const int FiguresShown = 5;

    /// <summary>The figures to look at: what is out or open, the least likely within its limits first.</summary>
    public IReadOnlyList<RoadFigure> FirstFigures =>
        [
            .. Answer
                .Figures.Where(f => f.Verdict is Verdict.Out or Verdict.CannotTellYet)
                .OrderBy(f => f.ProbabilityWithin)
                .Take(FiguresShown),
        ];

    /// <summary>All others, in the order of an answer.</summary>
    public IReadOnlyList<RoadFigure> OtherFigures => [.. Answer.Figures.Where(f => !FirstFigures.Contains(f))];

    /// <summary>Each side through its travel as found, in words: every other of the curve's points.</summary>
    public IReadOnlyList<(string Title, IReadOnlyList<IReadOnlyList<string>> Rows)> Travel =>
        [
            .. new[] { Side.Left, Side.Right }
                .Select(s =>
                    (Title: Say(s == Side.Left ? "road.front-wheel.left" : "road.front-wheel.right"), Points: Answer.FoundCurves[s])
                )
                .Where(c => c.Points.Count > 0)
                .Select(c => (c.Title, TravelRows.Of(c.Points, Display, Say("road.not-told")))),
        ];

    /// <summary>The main page.</summary>
    public static RoadView Of(CarRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return For(request.Car, request.Http.RequestServices.GetRequiredService<RoadAnswers>().For(request.Car));
    }

    /// <summary>The page on which the uncertainties are checked by trial.</summary>
    public static RoadView Tried(CarRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return For(request.Car, RoadInspection.Of(request.Car.File, PageTrials));
    }

    private static RoadView For(OpenCar car, RoadAnswer answer)
    {
        var display = RoadDisplay.Of(car.File);
        var pictures = new List<(string, string)>();
        if (answer.Sketches.Count > 0)
        {
            pictures.Add((Say("road.from-behind"), SvgWriter.Write(RoadFrontDrawing.Of(answer))));
            pictures.Add((Say("road.from-above"), SvgWriter.Write(RoadTopDrawing.Of(answer, display))));
            pictures.Add((Say("road.left-wheel-from-the"), SvgWriter.Write(RoadSideDrawing.Of(answer, Side.Left))));
            pictures.Add((Say("road.right-wheel-from-the"), SvgWriter.Write(RoadSideDrawing.Of(answer, Side.Right))));
            pictures.Add((Say("road.bump-steer"), SvgWriter.Write(RoadCurveDrawing.Toe(answer, display))));
            pictures.Add((Say("road.camber-over-travel"), SvgWriter.Write(RoadCurveDrawing.Camber(answer, display))));
        }

        return new(car, answer, display, pictures);
    }
}
