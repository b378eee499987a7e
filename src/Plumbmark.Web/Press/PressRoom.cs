using Microsoft.AspNetCore.Http;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>The press: which part may be straightened cold, how it is set up, how far the next bite goes, and when to stop.</summary>
public static class PressRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Press", car => car is null ? null : $"/cars/{car}/press", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("press", request => Show.Page<PressPage>(PressView.Of(request)));
        routes.CarChange("press", JobChanges.Lay);
        routes.CarPage("press/{job}", ShowJob);
        routes.CarPage("press/{job}/description", ShowDescription);
        routes.CarChange("press/{job}/description", JobChanges.Describe);
        routes.CarChange("press/{job}/bites", BiteChanges.Make);
        routes.CarPage("press/{job}/bites/{bite}/withdrawal", ShowWithdrawal);
        routes.CarChange("press/{job}/bites/{bite}/withdrawal", BiteChanges.TakeBack);
        routes.CarChange("press/{job}/crack-tests", BiteChanges.Test);
        routes.CarChange("press/{job}/removal", JobChanges.PutAway);
    }

    /// <summary>What is said where a job is not there.</summary>
    internal static IResult NoJob() => Show.NotFound(Say("press.there-is-no-such"));

    private static IResult ShowJob(CarRequest request) => JobView.Of(request) is { } view ? Show.Page<JobPage>(view) : NoJob();

    private static IResult ShowDescription(CarRequest request) =>
        DescriptionView.Of(request) is { } view ? Show.Page<DescriptionPage>(view) : NoJob();

    private static IResult ShowWithdrawal(CarRequest request) =>
        BiteWithdrawalView.Of(request) is { } view
            ? Show.Page<BiteWithdrawalPage>(view)
            : Show.NotFound(Say("press.there-is-no-such-bite"));
}
