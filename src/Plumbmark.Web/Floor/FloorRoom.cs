using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>The floor: the frame's points, its readings, and what they say.</summary>
public static class FloorRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Floor", car => car is null ? null : $"/cars/{car}/floor", Map);

    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("floor", request => Show.Page<FloorPage>(new FloorPage.View(request.Car)));
    }
}
