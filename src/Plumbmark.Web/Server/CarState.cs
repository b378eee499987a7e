using Plumbmark.Store;

namespace Plumbmark.Web.Server;

/// <summary>A car as it stood after one entry of its journal.</summary>
/// <param name="Car">Its number in the shed.</param>
/// <param name="Sequence">The number of the entry.</param>
internal readonly record struct CarState(long Car, long Sequence)
{
    /// <summary>As it stands now.</summary>
    public static CarState Of(OpenCar car) => new(car.Id, car.Sequence);
}
