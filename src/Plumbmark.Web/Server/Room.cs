namespace Plumbmark.Web.Server;

/// <summary>A group of pages with one link in the bottom navigation.</summary>
/// <param name="Name">The word on the link.</param>
/// <param name="Address">Where the room begins for a car; null for no car. A null answer means the room needs a car.</param>
/// <param name="Map">Adds the room's pages and changes.</param>
public sealed record Room(string Name, Func<long?, string?> Address, Action<RoomRoutes> Map);
