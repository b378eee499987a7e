using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Press;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>A part is laid in the press, described anew, or put away.</summary>
internal static class JobChanges
{
    public static IResult Lay(CarRequest request)
    {
        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("press.job.a-name"), faults);
        if (!PressWordLists.Kinds.TryGetValue(request.Field("kind"), out var kind))
        {
            faults.Add("kind", Say("press.job.choose-what-part-it"));
        }

        if (faults.Any)
        {
            return Show.Again<PressPage>(PressView.Of(request, faults));
        }

        // The name comes from the form, so that the same form sent twice lays the part in once.
        var job = new PressJob($"p{request.FormName():N}"[..9], new PressPart(name, kind, null, null, null, new PartHistory()));
        var refused = Gate.Examine(job) is GateOutcome.Refused;
        return request.Keep(PressAddress.Of(request.Car.Id, job.Id, refused ? "" : "/description"), new Act.PressJobDescribed(job));
    }

    public static IResult Describe(CarRequest request)
    {
        if (request.Job() is not { } job)
        {
            return PressRoom.NoJob();
        }

        var faults = new FieldFaults();
        var described = new DescriptionReading(request, faults).Read(job);
        return faults.Any
            ? Show.Again<DescriptionPage>(DescriptionView.Of(request, faults)!)
            : request.Keep(PressAddress.Of(request.Car.Id, job.Id), new Act.PressJobDescribed(described));
    }

    public static IResult PutAway(CarRequest request) =>
        request.Job() is { } job ? request.Keep(request.Address("press"), new Act.PressJobRemoved(job.Id)) : PressRoom.NoJob();
}
