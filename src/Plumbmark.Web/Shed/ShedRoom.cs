using Microsoft.AspNetCore.Http;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Shed;

/// <summary>The shed: the collection of cars on this machine.</summary>
public static class ShedRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Shed", _ => "/", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.Page("/", request => Show.Page<ShedPage>(ShedView.Of(request)));
        routes.Page("/first", request => Show.Page<FirstVisitPage>(FirstVisitView.Of(request)));
        routes.Page("/first/{step:int}", request => Show.Page<FirstVisitPage>(FirstVisitView.Of(request)));
        routes.Page("/look", request => Show.Page<LookPage>(new LookPage.View(Look.Of(request.Http), Look.Back(request.Query("back")))));
        routes.Change("/looks", Look.Choose);
        routes.Change("/cars", CarChanges.Create);
        routes.Change("/car-files", CarFileChanges.BringIn);
        routes.Page("/backup", BackupChanges.TakeOut);
        routes.Change("/restores", BackupChanges.BringBack);
        routes.CarPage("", request => Show.Page<CarPage>(CarView.Of(request)));
        routes.CarPage("file", CarFileChanges.TakeOut);
        routes.CarPage("journal", request => Show.Page<JournalPage>(JournalView.Of(request)));
        routes.CarChange("description", CarChanges.Describe);
        routes.CarChange("binning", CarChanges.PutInBin);
        routes.CarChange("undos", UndoChanges.Undo);
        // A binned car is not found by CarChange, so this one takes the number itself.
        routes.Change("/bin/{car:long}/return", CarChanges.TakeFromBin);
    }
}
