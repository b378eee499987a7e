using Plumbmark.Store;

namespace Plumbmark.Web.Waiting;

/// <summary>
/// What tells one car from every other, on any machine: the name of the first entry in its journal. Its number in the shed does not: another
/// journal behind the same address has a car of that number too, and a reading that waited on a phone must not end up in it.
/// </summary>
public static class CarMark
{
    /// <summary>The mark of a car; empty for one about which nothing has been written.</summary>
    public static string Of(OpenCar car) => car.Entries.Count == 0 ? "" : car.Entries[0].Entry.Id.ToString("N");
}
