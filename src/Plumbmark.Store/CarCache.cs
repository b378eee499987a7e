namespace Plumbmark.Store;

/// <summary>The cars read last, so that the next entry of an evening does not read the whole journal again; no more of them than the memory of a small machine bears.</summary>
internal sealed class CarCache
{
    private const int MostCars = 64;
    private readonly Dictionary<long, (OpenCar Car, long Used)> _cars = [];
    private long _now;

    /// <summary>The car as it was read last; null when it is not kept.</summary>
    public OpenCar? Get(long id)
    {
        if (!_cars.TryGetValue(id, out var kept))
        {
            return null;
        }

        _cars[id] = (kept.Car, ++_now);
        return kept.Car;
    }

    /// <summary>Keeps a car, and lets go of those that were not used for longest.</summary>
    public OpenCar Put(OpenCar car)
    {
        _cars[car.Id] = (car, ++_now);
        if (_cars.Count > MostCars)
        {
            foreach (var (id, _) in _cars.OrderBy(c => c.Value.Used).Take(MostCars / 4).ToList())
            {
                _cars.Remove(id);
            }
        }

        return car;
    }

    /// <summary>Lets go of all.</summary>
    public void Clear() => _cars.Clear();
}
