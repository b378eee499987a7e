using Microsoft.AspNetCore.Http;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The floor: the frame's points, its readings, and what they say.</summary>
public static class FloorRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Floor", car => car is null ? null : $"/cars/{car}/floor", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("floor", request => Show.Page<FloorPage>(FloorView.Of(request)));
        routes.CarChange("readings", ReadingChanges.Take);
        routes.CarChange("quick-readings", ReadingChanges.TakeLine);
        routes.CarPage("readings/{reading}/withdrawal", ShowWithdrawal);
        routes.CarChange("readings/{reading}/withdrawal", ReadingChanges.TakeBack);
        routes.CarPage("points", request => Show.Page<PointsPage>(PointsView.Of(request)));
        routes.CarChange("points", PointChanges.Add);
        routes.CarChange("skeletons", PointChanges.AddSkeleton);
        routes.CarPage("points/{point}", ShowPoint);
        routes.CarChange("points/{point}", PointChanges.DrawAnew);
        routes.CarChange("points/{point}/removal", PointChanges.Remove);
        routes.CarPage("points/{point}/drop", ShowObstructed);
        routes.CarChange("points/{point}/obstruction", ObstructedChanges.Tell);
        routes.CarChange("points/{point}/indirect-drops", ObstructedChanges.BringDown);
        routes.CarPage("points/{point}/story", ShowStory);
        routes.CarChange("photos", PhotoChanges.Take);
        routes.CarChange("photos/{photo}/removal", PhotoChanges.PutAway);
        routes.CarPage("sessions", ShowSessions);
        routes.CarPage("turning", request => Show.Page<TurningPage>(TurningView.Of(request)));
        routes.CarPage("level", request => Show.Page<LevelPage>(LevelView.Of(request)));
        routes.CarChange("levels", LevelChanges.Read);
        routes.CarPage("plan", ShowPlan);
        routes.CarPage("tools", request => Show.Page<ToolsPage>(ToolsView.Of(request)));
        routes.CarChange("tools", ToolChanges.Describe);
        routes.CarChange("tools/{tool}/removal", ToolChanges.Remove);
        routes.CarPage("limits", request => Show.Page<LimitsPage>(LimitsView.Of(request)));
        routes.CarChange("limits", LimitChanges.Choose);
    }

    private static IResult ShowWithdrawal(CarRequest request) =>
        WithdrawalView.Of(request, new FieldFaults()) is { } view
            ? Show.Page<WithdrawalPage>(view)
            : Show.NotFound(Say("floor.there-is-no-such"));

    private static IResult ShowStory(CarRequest request) =>
        StoryView.Of(request) is { } view ? Show.Page<StoryPage>(view) : Show.NotFound(Say("points.none-such"));

    private static IResult ShowSessions(CarRequest request) => Show.Page<SessionsPage>(SessionsView.Of(request));

    private static IResult ShowPlan(CarRequest request)
    {
        var view = PlanView.Of(request);
        return view.Faults.Any ? Show.Again<PlanPage>(view) : Show.Page<PlanPage>(view);
    }

    private static IResult ShowObstructed(CarRequest request) =>
        ObstructedView.Of(request) is { } view ? Show.Page<ObstructedPage>(view) : Show.NotFound(Say("points.none-such"));

    private static IResult ShowPoint(CarRequest request) =>
        PointView.Of(request) is { } view ? Show.Page<PointPage>(view) : Show.NotFound(Say("points.none-such"));
}
