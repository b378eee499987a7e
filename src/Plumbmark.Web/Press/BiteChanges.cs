using System.Globalization;
using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Press;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>A bite is made or taken back, and a crack test is entered. None of them is ever changed.</summary>
internal static class BiteChanges
{
    public static IResult Make(CarRequest request)
    {
        if (request.Job() is not { } job)
        {
            return PressRoom.NoJob();
        }

        var faults = new FieldFaults();
        return BiteForm.Read(request, faults) is { } bite
            ? request.Keep(
                PressAddress.Of(request.Car.Id, job.Id),
                car => [new Act.BiteMade(job.Id, bite with { Id = Next(car, job.Id, "b", j => j.Bites.Count) })]
            )
            : Show.Again<JobPage>(JobView.Of(request, BiteForm.Sent(request, faults))!);
    }

    public static IResult TakeBack(CarRequest request)
    {
        if (BiteWithdrawalView.Of(request) is not { } view)
        {
            return Show.NotFound(Say("press.bite.there-is-no-such"));
        }

        var reason = request.RequiredText("reason", Say("press.bite.a-reason"), view.Faults);
        return view.Faults.Any
            ? Show.Again<BiteWithdrawalPage>(view)
            : request.Keep(PressAddress.Of(request.Car.Id, view.Job.Id), new Act.BiteWithdrawn(view.Job.Id, view.Bite.Id, reason));
    }

    public static IResult Test(CarRequest request)
    {
        if (request.Job() is not { } job)
        {
            return PressRoom.NoJob();
        }

        var faults = new FieldFaults();
        if (!PressWordLists.Methods.TryGetValue(request.Field("method"), out var method))
        {
            faults.Add("method", Say("press.bite.choose-how-it-was"));
        }

        if (!PressWordLists.Answers.TryGetValue(request.Field("found"), out var found))
        {
            faults.Add("found", Say("press.bite.say-whether-a-crack"));
        }

        var note = request.OptionalText("test-note", faults);
        var after = job.StandingBites.LastOrDefault()?.Id;
        return faults.Any
            ? Show.Again<JobPage>(JobView.Of(request, BiteForm.Empty with { Faults = faults })!)
            : request.Keep(
                PressAddress.Of(request.Car.Id, job.Id),
                car =>
                    [
                        new Act.CrackTested(
                            job.Id,
                            new CrackTest(Next(car, job.Id, "t", j => j.CrackTests.Count), method, found == Answer.Yes, after, note)
                        ),
                    ]
            );
    }

    private static string Next(OpenCar car, string job, string letter, Func<PressJob, int> count) =>
        letter + ((car.File.Press.FirstOrDefault(j => j.Id == job) is { } now ? count(now) : 0) + 1).ToString(CultureInfo.InvariantCulture);
}
