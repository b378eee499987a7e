using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Press;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Press;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Press;

/// <summary>What the page of one part in the press shows.</summary>
public sealed record JobView
{
    /// <summary>The car.</summary>
    public required OpenCar Car { get; init; }

    /// <summary>Everything there is to say about the job.</summary>
    public required PressReport Report { get; init; }

    /// <summary>Words in the car's unit.</summary>
    public required PressWords Words { get; init; }

    /// <summary>What stands in the form for a bite.</summary>
    public required BiteForm Form { get; init; }

    /// <summary>The set-up to scale, as SVG; null without a plan.</summary>
    public required string? SetUp { get; init; }

    /// <summary>Travel against set, as SVG; null before the first plan.</summary>
    public required string? Plot { get; init; }

    /// <summary>The job.</summary>
    public PressJob Job => Report.Job;

    /// <summary>The verdict on straightness once something was pressed; null where there is none.</summary>
    public Verdict? Straightness => Report.Log?.Straightness;

    /// <summary>Whether a bite may be entered now.</summary>
    public bool MayBite => Report.State is PressState.NextBite;

    /// <summary>Whether a crack test is what is wanted now.</summary>
    public bool WantsTest =>
        Report.State is PressState.Stopped or PressState.Straight { IsTested: false }
        || (Report.State is PressState.Asking asking && asking.Questions.Any(q => q.Topic == "crackTest"));

    /// <summary>Class of the headline card: how it is dressed, never all it says.</summary>
    public string Dress =>
        Report.State.Match(_ => "says-out", _ => "", _ => "", _ => "says-next", _ => "says-out", _ => "says-out", _ => "says-true");

    /// <summary>The page for a request; null when there is no such job.</summary>
    public static JobView? Of(CarRequest request, BiteForm? sent = null)
    {
        if (request.Job() is not { } job)
        {
            return null;
        }

        var words = new PressWords(request.Car.File.Units);
        var report = PressReport.Of(job);
        return new JobView
        {
            Car = request.Car,
            Report = report,
            Words = words,
            Form = sent ?? BiteForm.Empty,
            SetUp = report.Plan is { } plan ? SvgWriter.Write(PressSetUpDrawing.Of(plan, words)) : null,
            Plot = report is { Plan: { } p, Log: { } log } ? SvgWriter.Write(TravelSetDrawing.Of(p, log, report.State, words)) : null,
        };
    }
}
