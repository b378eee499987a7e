using Plumbmark.Web.Server;

namespace Plumbmark.Web.Shed;

/// <summary>The shed: the collection of cars on this machine.</summary>
public static class ShedRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Shed", _ => "/", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.Page("/", request => Show.Page<ShedPage>(new ShedPage.View(request.Journals.Cars(), request.Journals.Bin())));
    }
}
