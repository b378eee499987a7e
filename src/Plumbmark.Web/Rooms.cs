using Plumbmark.Web.Bench;
using Plumbmark.Web.Book;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Phones;
using Plumbmark.Web.Press;
using Plumbmark.Web.Road;
using Plumbmark.Web.Server;
using Plumbmark.Web.Shed;
using Plumbmark.Web.Sheet;
using Plumbmark.Web.Waiting;

namespace Plumbmark.Web;

/// <summary>Every room there is. A new room is one line here; its pages, forms and styles stand in its own folder.</summary>
public static class Rooms
{
    /// <summary>The rooms in the order of the bottom navigation: Shed, Book, Floor, Bench, Press, Road, Sheet.</summary>
    public static IReadOnlyList<Room> All { get; } =
    [
        ShedRoom.Room,
        BookRoom.Room,
        FloorRoom.Room,
        BenchRoom.Room,
        PressRoom.Room,
        RoadRoom.Room,
        SheetRoom.Room,
        WaitingRoom.Room,
        PhonesRoom.Room,
    ];
}
