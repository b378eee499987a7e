using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Floor;

namespace Plumbmark.Web.Road;

/// <summary>What the Road says of a car, worked out once for each state of its journal.</summary>
public sealed class RoadAnswers(FloorAnswers floor)
{
    private const int KeptAtMost = 32;
    private readonly Lock _lock = new();
    private readonly Dictionary<long, (long Sequence, Lazy<RoadAnswer> Answer)> _byCar = [];

    /// <summary>The answer for a car as it stands.</summary>
    public RoadAnswer For(OpenCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        Lazy<RoadAnswer> answer;
        lock (_lock)
        {
            if (!_byCar.TryGetValue(car.Id, out var known) || known.Sequence != car.Sequence)
            {
                if (_byCar.Count >= KeptAtMost)
                {
                    _byCar.Clear();
                }

                known = (car.Sequence, new Lazy<RoadAnswer>(() => RoadInspection.Of(car.File, MeasuredPlaces.Of(floor.For(car)))));
                _byCar[car.Id] = known;
            }

            answer = known.Answer;
        }

        return answer.Value;
    }

    /// <summary>The same with the uncertainties checked by trial; worked out anew each time.</summary>
    public RoadAnswer Tried(OpenCar car, int trials)
    {
        ArgumentNullException.ThrowIfNull(car);
        return RoadInspection.Of(car.File, MeasuredPlaces.Of(floor.For(car)), trials);
    }
}
