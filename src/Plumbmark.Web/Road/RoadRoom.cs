using Microsoft.AspNetCore.Http;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>The road: what the wheels will do, whether the adjusters can take it up, and the wheel check after assembly.</summary>
public static class RoadRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Road", car => car is null ? null : $"/cars/{car}/road", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("road", request => Show.Page<RoadPage>(RoadView.Of(request)));
        routes.CarPage("road/trials", request => Show.Page<TrialsPage>(RoadView.Tried(request)));
        routes.CarPage("road/front", request => Show.Page<DrawingPage>(DrawingView.Front(request)));
        routes.CarChange("road/front", DrawingChanges.Front);
        routes.CarPage("road/rear", request => Show.Page<DrawingPage>(DrawingView.Rear(request)));
        routes.CarChange("road/rear", DrawingChanges.Rear);
        routes.CarPage("road/figures", request => Show.Page<BookPage>(BookView.Of(request)));
        routes.CarChange("road/figures", BookChanges.Keep);
        routes.CarChange("road/figures/{figure}/removal", BookChanges.Remove);
        routes.CarPage("road/adjusters", request => Show.Page<AdjustersPage>(AdjustersView.Of(request)));
        routes.CarChange("road/adjusters", AdjusterChanges.Keep);
        routes.CarChange("road/adjusters/{adjuster}/removal", AdjusterChanges.Remove);
        routes.CarPage("road/findings", request => Show.Page<FindingsPage>(FindingsView.Of(request)));
        routes.CarChange("road/findings", FindingChanges.Keep);
        routes.CarPage("road/findings/{finding}/withdrawal", FindingChanges.AskBack);
        routes.CarChange("road/findings/{finding}/withdrawal", FindingChanges.TakeBack);
        routes.CarPage("road/wheels", request => Show.Page<WheelsPage>(WheelsView.Of(request)));
        routes.CarChange("road/wheels", WheelChanges.Keep);
        routes.CarPage("road/wheels/{reading}/withdrawal", WheelChanges.AskBack);
        routes.CarChange("road/wheels/{reading}/withdrawal", WheelChanges.TakeBack);
    }
}
